import type { Arc } from "../shell/arc.ts";
import type { Shell } from "../shell/shell.ts";
import { outline, type Point } from "../shell/zones.ts";

/** Borders of the stretches of a hoop, from the ground on the left (-x) to the ground on the right. */
export const hoopBorders = [
  "left ground",
  "left springing",
  "left quarter by arc",
  "left quarter by span",
  "crown",
  "right quarter by span",
  "right quarter by arc",
  "right springing",
  "right ground",
] as const;
export type HoopBorder = (typeof hoopBorders)[number];

/** Stretches between neighbouring borders: both readings of the quarter and half spans are made of them. */
export const hoopStretchCount = hoopBorders.length - 1;

export interface SectionBorder extends Point {
  readonly id: HoopBorder;
  /** Share of the developed arch from the left springing to the right one; null on the ground. */
  readonly archShare: number | null;
}

/** Share of the developed arch, from the springing on its side, at a quarter of the span. */
export const quarterBySpanShare = ({ span, c, radius, springAngle, crownAngle }: Arc): number =>
  (Math.acos((span / 4 + c) / radius) - springAngle) / (2 * (crownAngle - springAngle));

/**
 * The borders on the outline of the shell, in house axes, m. On the centre line of a hoop they lie
 * at the same share of its own arch. A quarter by arc lies never above the quarter by span.
 */
export function hoopSection(shell: Shell): readonly SectionBorder[] {
  const byArc = outline(shell, "arc");
  const bySpan = outline(shell, "span");
  const spanShare = quarterBySpanShare(shell.arc);
  const border = (place: number, { x, z }: Point, archShare: number | null): SectionBorder => ({
    id: hoopBorders[place] as HoopBorder,
    x,
    z,
    archShare,
  });
  return [
    border(0, byArc.windwardGround, null),
    border(1, byArc.windwardSpring, 0),
    border(2, byArc.windwardQuarter, 0.25),
    border(3, bySpan.windwardQuarter, spanShare),
    border(4, byArc.crown, 0.5),
    border(5, bySpan.leewardQuarter, 1 - spanShare),
    border(6, byArc.leewardQuarter, 0.75),
    border(7, byArc.leewardSpring, 1),
    border(8, byArc.leewardGround, null),
  ];
}
