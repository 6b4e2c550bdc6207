import { type Chapter, derived, taken } from "@hoopstay/core";
import {
  aboveGround,
  angleAlong,
  arcCentreHeight,
  arcHeight,
  arcPlaceAcross,
  arcPlaceUp,
  arcRadius,
  type CentreLines,
  crownAngleOf,
  halfSpan,
  quarterOfSpan,
  springAngleOf,
  uprightOffset,
} from "@hoopstay/load";

/** Sizes of the shell as the chapter has worked them, m. */
interface Sizes {
  readonly b: number;
  readonly f: number;
  readonly zs: number;
}

/** Centre, radius and angles of the shell's arcs, m and rad. */
interface ArcWork {
  readonly c: number;
  readonly e: number;
  readonly R: number;
  readonly t0: number;
  readonly t1: number;
}

function offsetStep(chapter: Chapter, { shape, centreOffset }: CentreLines, { b, f }: Sizes) {
  if (shape === "pointed" && centreOffset === undefined) return chapter.work(uprightOffset, [b, f]);
  const [origin, value] =
    shape === "round" ? ["a round arch has one centre", 0] : ["as entered", centreOffset ?? 0];
  const name = "offset of the arc's centre beyond the middle";
  return chapter.work(taken(origin, "offset", "c", name, value, "length", derived(origin)), []);
}

/** The arcs of the shell, the crown, and where the outer quarters end, read along the arc and along the span. */
export function arcSteps(chapter: Chapter, lines: CentreLines, sizes: Sizes): ArcWork {
  const { b, f, zs } = sizes;
  const c = offsetStep(chapter, lines, sizes);
  const e = chapter.work(arcCentreHeight, [b, f, c]);
  const R = chapter.work(arcRadius, [b, c, e]);
  const t0 = chapter.work(springAngleOf, [b, c, e]);
  const t1 = chapter.work(crownAngleOf, [f, c, e]);
  chapter.work(halfSpan, [b]);
  chapter.work(aboveGround, [zs, f], { symbol: "z_c", note: "the crown" });
  const note = "end of the outer quarter, read along the arc";
  const t = chapter.work(angleAlong, [t0, t1, 1 / 2], { symbol: "t_q", note });
  chapter.work(arcPlaceAcross, [R, t, c], { symbol: "x_q", note });
  const along = chapter.work(arcPlaceUp, [e, R, t], { symbol: "y_q", note });
  chapter.work(aboveGround, [zs, along], { symbol: "z_q", note });
  const other = "end of the outer quarter, read along the span";
  const x = chapter.work(quarterOfSpan, [b], { symbol: "x_q,s", note: other });
  const up = chapter.work(arcHeight, [e, R, x, c], { symbol: "y_q,s", note: other });
  chapter.work(aboveGround, [zs, up], { symbol: "z_q,s", note: other });
  return { c, e, R, t0, t1 };
}
