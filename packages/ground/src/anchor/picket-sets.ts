import { type Chapter, type Citation, cite, formula, POUND_FORCE, taken } from "@hoopstay/core";
import type { GroundAtWork } from "../soil/ground-at-work.ts";
import type { PicketHoldfast } from "./anchor.ts";

interface PicketRow {
  /** Pounds, in undisturbed loam. */
  readonly pounds: number;
  readonly citation: Citation;
}

const navy = cite("navedtra-14251", "chapter 6, holdfasts in undisturbed loam", "read");
const army = cite("fm-5-125", "chapter 4, picket holdfasts", "memory");

/** Wooden pickets at least 3 in thick and 5 ft long, 3 to 4 ft deep, 3 to 6 ft apart, lashed. */
export const picketRows = {
  "1": { pounds: 700, citation: navy },
  "1-1": { pounds: 1400, citation: army },
  "2-1": { pounds: 2000, citation: army },
  "1-1-1": { pounds: 1800, citation: navy },
  "3-2-1": { pounds: 4000, citation: navy },
} as const satisfies Record<PicketHoldfast["set"], PicketRow>;

/** Wet clay or gravel 0.9, wet river clay or sand 0.5; only the lower is used. */
export const picketWetFactors = { "clay or gravel": 0.9, "river clay or sand": 0.5 } as const;

const setPower = (set: PicketHoldfast["set"]) =>
  taken(
    "read from the table",
    "picket-set",
    "T_0",
    `holding power of a ${set} set in loam`,
    picketRows[set].pounds * POUND_FORCE,
    "force",
    picketRows[set].citation,
  );

const wetFactor = taken(
  "read from its source",
  "picket-wet-factor",
  "k_w",
  "picket set in wet ground or sand",
  picketWetFactors["river clay or sand"],
  "ratio",
  cite("fm-5-125", "chapter 4, wet ground", "memory"),
);

const wetPower = formula({
  id: "picket-set-wet",
  symbol: "T_n",
  name: "holding power of a picket set in wet ground or sand",
  measure: "force",
  arguments: [
    ["T_0", "in loam", "force"],
    ["k_w", "wet ground", "ratio"],
  ],
  expression: "T_0 * k_w",
  citation: wetFactor.citation,
  evaluate: (loam, factor) => loam * factor,
});

/** Ultimate capacity of a picket set along a flat tether, N; half in sand and in wet ground. */
export function picketCapacity(
  { set }: PicketHoldfast,
  ground: GroundAtWork,
  chapter: Chapter,
): number {
  const loam = chapter.work(setPower(set), []);
  if (ground.likeness === "clay" && !ground.wet) return loam;
  return chapter.work(wetPower, [loam, chapter.work(wetFactor, [])]);
}
