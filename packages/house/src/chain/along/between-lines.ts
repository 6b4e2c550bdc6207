import { pointOnLine } from "@hoopstay/frame";
import type { Worksheet } from "@hoopstay/strength";
import { pressedWidth, spanMoment } from "../component/component-loads.ts";
import type { ChainContext } from "../context.ts";
import { workWallPressure } from "./wall-work.ts";

/** A stretch of an end hoop from one line of purlin to the next, or from its foot to the lowest. */
interface BetweenLines {
  readonly length: number;
  /** Half the wall's height at its upper end: the wall that leans on a metre of hoop, m. */
  readonly width: number;
}

/**
 * The stretch in which an end wall bends its hoop most, between lines evenly spaced along the arch;
 * null without lines.
 */
export function worstBetween(
  { runs, evaluation }: ChainContext,
  lines: number,
): BetweenLines | null {
  if (lines === 0) return null;
  const { arch, leg, line } = runs.outline;
  const step = arch / (lines + 1);
  let worst: BetweenLines = { length: 0, width: 0 };
  for (let upper = 1; 2 * (upper - 1) < lines + 1; upper += 1) {
    const overCrown = 2 * upper > lines + 1;
    const top = overCrown ? evaluation.shell.crown : pointOnLine(line, leg + upper * step).z;
    const own = { length: upper === 1 ? leg + step : step, width: top / 2 };
    if (own.width * own.length ** 2 > worst.width * worst.length ** 2) worst = own;
  }
  return worst;
}

/**
 * Moment out of the hoop's plane between two lines, N m, on a sheet: simple spans, studs from the
 * ground to the hoop.
 *
 * @param size wind on the wall per unit of K_d q_h, m2
 * @param line wind on a metre of every hoop along the house, m
 */
export function workBetween(
  sheet: Worksheet,
  q: number,
  size: number,
  area: number,
  line: number,
  { length, width }: BetweenLines,
): number {
  const load = sheet.work(pressedWidth, [workWallPressure(sheet, q, size, area, line), width]);
  return sheet.work(spanMoment, [load, length], { symbol: "M_2" });
}
