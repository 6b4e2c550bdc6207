import { type Chapter, cite, FOOT, formula, POUND_PER_SQUARE_FOOT, taken } from "@hoopstay/core";
import type { GroundAtWork } from "../soil/ground-at-work.ts";
import { refuse, requireSize, requireWithin } from "../soil/require.ts";
import type { Deadman } from "./anchor.ts";
import { bracket, interpolated } from "./common-formulas.ts";

const citation = cite("tm-5-5420-278-10", "table 9, loamy soil", "read");

/** Holding power, lb per square foot of face, by mean depth in ft and cable slope 1 to `runs`. */
export const deadmanTable = {
  citation,
  runs: [1, 2, 3, 4],
  rows: [
    { depth: 3, power: [950, 1300, 1450, 1500] },
    { depth: 4, power: [1750, 2200, 2600, 2700] },
    { depth: 5, power: [2800, 3600, 4000, 4100] },
    { depth: 6, power: [3800, 5100, 5800, 6000] },
    { depth: 7, power: [5100, 7000, 8000, 8400] },
  ],
} as const;

const tabled = { ...interpolated, citation };

/** Factors on the table, and the greatest length over face of each body. */
export const deadmanSoilFactors = { loam: 1, "fine-grained wet or sandy": 0.5, rock: 5 } as const;
export const deadmanSlenderness = { timber: 9, log: 5 } as const;

const soilFactor = (name: keyof typeof deadmanSoilFactors) =>
  taken(
    "read from the table",
    "deadman-soil-factor",
    "k_g",
    `soil factor, ${name}`,
    deadmanSoilFactors[name],
    "ratio",
    cite("tm-5-5420-278-10", "note to table 9", "read"),
  );

const powerInPascals = formula({
  id: "deadman-power",
  symbol: "HP",
  name: "holding power per area of face",
  measure: "pressure",
  arguments: [["y", "holding power, lb per square foot", "ratio"]],
  expression: "y * 4.4482216152605 / 0.3048^2",
  citation,
  evaluate: (power) => power * POUND_PER_SQUARE_FOOT,
});

const holdingPower = formula({
  id: "deadman-capacity",
  symbol: "T_n",
  name: "holding power of a deadman along its cable",
  measure: "force",
  arguments: [
    ["HP", "holding power per area of face", "pressure"],
    ["k_g", "soil factor", "ratio"],
    ["h", "height of the face", "length"],
    ["L", "length", "length"],
  ],
  expression: "HP * k_g * h * (L - 0.3048)",
  citation: cite("tm-5-5420-278-10", "length less 1 ft for the cable trench", "read"),
  range: "longer than 1 ft",
  evaluate: (power, factor, face, length) => power * factor * face * (length - FOOT),
});

/**
 * Holding power of loam per area of face, Pa: between printed depths and between printed slopes
 * (as run over rise) on straight lines. Between depths that is up to 4 % above a smooth curve, within
 * the factor of 2; between slopes it is below it.
 *
 * @param depth mean depth of the face, m; 3 to 7 ft
 * @param aboveGround rise of the cable, rad; from 1:4 to 1:1
 * @throws Refusal `ground-outside`
 */
export function deadmanHoldingPower(depth: number, aboveGround: number, chapter: Chapter): number {
  const mend = "Change depth or slope to lie inside the manual's table, or test it.";
  const feet = depth / FOOT;
  const run = 1 / Math.tan(aboveGround);
  requireWithin(feet, [3, 7], "a mean depth in feet", mend);
  requireWithin(run, [1, 4], "a run over rise of the cable", mend);
  const columns = deadmanTable.runs.map((at, place) => ({ at, place }));
  const [steep, flat] = bracket(columns, (column) => column.at, run);
  const [upper, lower] = bracket(deadmanTable.rows, (row) => row.depth, feet);
  const power = (row: (typeof deadmanTable.rows)[number]): number => {
    const values = [row.power[steep.place] as number, row.power[flat.place] as number] as const;
    return chapter.work(tabled, [run, steep.at, flat.at, ...values], {
      note: `lb per square foot at ${row.depth} ft, by run over rise`,
    });
  };
  const values = [feet, upper.depth, lower.depth, power(upper), power(lower)] as const;
  return chapter.work(powerInPascals, [
    chapter.work(tabled, [...values], { note: "by depth, ft" }),
  ]);
}

/**
 * Ultimate capacity of a buried timber or log along its cable, N, by the military table. Sand and
 * anything wet get half; dry clay counts as loam; rock is not credited with its factor of 5.
 *
 * @returns null where the body is too slender for its length by the manual
 * @throws Refusal `not-positive`, `out-of-range`, `ground-outside`
 */
export function deadmanCapacity(
  deadman: Deadman,
  aboveGround: number,
  ground: GroundAtWork,
  chapter: Chapter,
): number | null {
  const { body, face, length, depth } = deadman;
  requireSize(face, "a face height");
  requireSize(length, "a length");
  if (!(length > FOOT)) {
    refuse("out-of-range", "a deadman longer than 1 ft, the trench", length, "Measure it again.");
  }
  if (length / face > deadmanSlenderness[body] * (1 + 1e-9)) return null;
  const power = deadmanHoldingPower(depth, aboveGround, chapter);
  const loam = ground.likeness === "clay" && !ground.wet;
  const factor = chapter.work(soilFactor(loam ? "loam" : "fine-grained wet or sandy"), []);
  return chapter.work(holdingPower, [power, factor, face, length]);
}
