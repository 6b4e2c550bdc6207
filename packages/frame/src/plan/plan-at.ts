import type { RailSide } from "./base.ts";
import type { BasePlan } from "./base-plan.ts";
import type { PlanResponse } from "./response.ts";

/** Which side of a station is meant where shear or torque jump: toward -y or toward +y. */
export type StationSide = "before" | "behind";

/** One place of a rail; the senses are those of `RailResponse`. */
export interface PlanPoint {
  readonly y: number;
  readonly deflection: number;
  readonly slope: number;
  readonly moment: number;
  readonly shear: number;
  readonly twist: number;
  readonly torque: number;
}

/**
 * A rail at any place, exactly. Beyond its ends it is continued: the caller keeps to it.
 *
 * @param side which side of a jump, behind it if not said
 */
export function planAt(
  { y: stations, base }: BasePlan,
  response: PlanResponse,
  rail: RailSide,
  y: number,
  side: StationSide = "behind",
): PlanPoint {
  let at = stations.length - 1;
  while (at > 0 && ((stations[at] as number) > y || (side === "before" && stations[at] === y))) {
    at -= 1;
  }
  const { bending, twist: twisting } = base[rail];
  const { deflection, slope, moment, shear, twist, torque } = response[rail];
  const start = stations[at] as number;
  const h = y - start;
  const rise = response.evenHold[1] as number;
  const q = (response.evenHold[0] as number) + rise * (start - base.length / 2);
  const [u, t] = [deflection[at] as number, slope[at] as number];
  const m = moment[at] as number;
  // Before the front end nothing acts yet.
  const acts = side === "behind" || y > start ? 1 : 0;
  const [v, w] = [acts * (shear[at] as number), acts * (torque[at] as number)];
  return {
    y,
    deflection:
      u + h * (t + (h / bending) * (m / 2 + h * (v / 6 + h * (q / 24 + (h * rise) / 120)))),
    slope: t + (h / bending) * (m + h * (v / 2 + h * (q / 6 + (h * rise) / 24))),
    moment: m + h * (v + h * (q / 2 + (h * rise) / 6)),
    shear: v + h * (q + (h * rise) / 2),
    twist: (twist[at] as number) + (w * h) / twisting,
    torque: w,
  };
}
