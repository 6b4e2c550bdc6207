import { Chapter, judged, sumOf } from "@hoopstay/core";
import type { GroundAtWork } from "../soil/ground-at-work.ts";
import { refuse, requireSize } from "../soil/require.ts";
import type { Helix, ScrewAnchor } from "./anchor.ts";
import { ringArea } from "./plate-formulas.ts";
import { plateUplift } from "./plate-uplift.ts";

/**
 * Diameters by which helices must stand apart to be added. Sand: how far the breakout over a deep
 * plate reaches in the densest sand of the theory, its critical H/B at 45 degrees. One number for
 * every sand: a reach that grew with phi would let better ground hold less.
 */
const reach = { clay: 3, sand: 9 } as const;

const overlap = judged(
  "helices are added in clay where they stand 3 diameters apart (helical practice, memory), in " +
    "sand 9, the reach of breakout over a plate; nearer ones break the same soil, and only the " +
    "set that holds most without overlap counts: safe side",
);

const mostHelices = 6;

/**
 * Ultimate uplift of a screw anchor, N: the sum over the set of its helices that holds most while
 * every two of the set stand clear of each other. Never more than the sum of all.
 *
 * A larger upper helix may need more room and lose its count, so with several helices a larger
 * plate can rate lower; with one it never does.
 *
 * @throws Refusal `not-positive`, `sizes-disagree` (helix not wider than its shaft), or
 * `ground-outside`
 */
export function helixUplift(
  { helices, shaft }: ScrewAnchor,
  ground: GroundAtWork,
  chapter: Chapter,
): { readonly uplift: number; readonly model: string; readonly counted: number } {
  requireSize(shaft.diameter, "a shaft diameter");
  if (helices.length === 0 || helices.length > mostHelices) {
    refuse("out-of-range", `1 to ${mostHelices} helices`, helices.length, "List the plates.");
  }
  const plates = helices.map((helix) => {
    requireSize(helix.diameter, "a helix diameter");
    if (helix.diameter <= shaft.diameter) {
      const mend = "Measure plate and shaft again.";
      refuse("sizes-disagree", "a helix wider than its shaft", helix.diameter, mend);
    }
    const own = new Chapter("helix", "helix");
    const area = own.work(ringArea, [helix.diameter, shaft.diameter]);
    return { helix, own, ...plateUplift(area, helix.diameter, helix.depth, ground, own) };
  });
  const best = clearSets(plates, reach[ground.likeness]).reduce((one, other) =>
    total(other) > total(one) ? other : one,
  );
  for (const { own } of best) chapter.steps.push(...own.steps);
  const terms = best.map((_, index) => ({
    symbol: `Q_${index + 1}`,
    name: `uplift of helix ${index + 1}`,
    measure: "force" as const,
  }));
  const sum = sumOf("helix-sum", "Q", "uplift of the helices counted", "force", terms, overlap);
  const uplift = chapter.work(
    sum,
    best.map((plate) => plate.uplift),
  );
  return { uplift, model: (best[0] as (typeof plates)[number]).model, counted: best.length };
}

const total = (plates: readonly { readonly uplift: number }[]): number =>
  plates.reduce((sum, plate) => sum + plate.uplift, 0);

/** Every set of plates in which each two are clear of each other, that of none first. */
function clearSets<Plate extends { readonly helix: Helix }>(
  plates: readonly Plate[],
  apart: number,
): Plate[][] {
  const sets: Plate[][] = [[]];
  for (const plate of plates) {
    const fitting = sets.filter((set) =>
      set.every((member) => clear(member.helix, plate.helix, apart)),
    );
    sets.push(...fitting.map((set) => [...set, plate]));
  }
  return sets;
}

function clear(one: Helix, other: Helix, diameters: number): boolean {
  const needed = diameters * Math.max(one.diameter, other.diameter);
  return Math.abs(one.depth - other.depth) >= needed * (1 - 1e-9);
}
