import { cite, constant, judged } from "@hoopstay/core";
import type { Shell } from "../shell/shell.ts";
import type { QuarterReading } from "../shell/zones.ts";
import { alongStretches, lightSuction } from "./along-ridge.ts";
import { centreHalf, leewardQuarter, windwardRows } from "./arched-roof.ts";
import { gustFactor } from "./constants.ts";
import { freeRoofAcross, freeRoofAlong, freeRoofSets } from "./free-roof.ts";
import { quarterBySpanShare } from "./hoop-section.ts";
import type { Covering } from "./wind-surfaces.ts";

export const componentArchFactor = constant(
  "component-arch-factor",
  "k_c",
  "share of the arched-roof coefficients that components take",
  0.87,
  "ratio",
  cite("bnbc-2020", "figure 6.2.8, note on components (ASCE 7-16 figure 30.3-8)", "read"),
);

export const componentEdgeFactor = constant(
  "component-edge-factor",
  "k_e",
  "factor on component coefficients near an edge",
  1.5,
  "ratio",
  judged("beside it the standard's gable perimeter runs; worse kept"),
);

export const archAlongCitation = judged(
  "the arch's components take 0.87 of the suction along the ridge too, its highest; safe side",
);

/**
 * Greatest (inward) and least (outward) coefficient of a component, + toward the surface, whatever
 * way the wind blows.
 */
export interface ComponentCoefficients {
  readonly inward: number;
  readonly outward: number;
}

/** The arch away from its edges: outer quarters, either of which may be windward, and centre half. */
export interface ArchField {
  readonly quarter: ComponentCoefficients;
  readonly centre: ComponentCoefficients;
}

const between = (values: readonly number[]): ComponentCoefficients => ({
  inward: Math.max(...values),
  outward: Math.min(...values),
});

/** GC_p on the arch away from its edges; an open house adds the free-roof sets. Bare: none. */
export function archField(shell: Shell, covering: Covering): ArchField | null {
  if (covering === "bare") return null;
  const { riseRatio, springing, f, h, L } = shell;
  const share = componentArchFactor.value;
  const along = [lightSuction, ...alongStretches(h / L).map(({ coefficient }) => coefficient)];
  const windward = windwardRows(riseRatio, springing / f).map((row) =>
    row.coefficient.evaluate(riseRatio),
  );
  const free = covering === "open" ? freeCoefficients(riseRatio) : [];
  const scaled = (values: readonly number[]): ComponentCoefficients =>
    between([...[...values, ...along].map((value) => share * value), ...free]);
  return {
    quarter: scaled([...windward, leewardQuarter.evaluate()]),
    centre: scaled([centreHalf.evaluate(riseRatio)]),
  };
}

/** G C_N of every free-roof set, across and along. */
function freeCoefficients(riseRatio: number): number[] {
  return freeRoofSets.flatMap((_, set) => {
    const { windward, leeward } = freeRoofAcross(riseRatio, set);
    const along = freeRoofAlong[set] as readonly number[];
    return [windward, leeward, ...along].map((value) => gustFactor.value * value);
  });
}

/** Parts of the arch a place lies in, by the readings that run. */
export function archPartsAt(
  { arc }: Shell,
  archShare: number,
  reading?: QuarterReading,
): { readonly quarter: boolean; readonly centre: boolean } {
  const fromSpringing = Math.min(archShare, 1 - archShare);
  const bySpan = quarterBySpanShare(arc);
  const borders = reading === "arc" ? [0.25] : reading === "span" ? [bySpan] : [0.25, bySpan];
  return {
    quarter: borders.some((border) => fromSpringing <= border),
    centre: borders.some((border) => fromSpringing >= border),
  };
}
