import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AnchorRow, HoldReview, KindReview, LayoutReview, StateSummary } from "@hoopstay/core";
import {
  type Evaluation,
  evaluate,
  type House,
  houseSchema,
  type ReviewMeta,
  readHouseModel,
  readSiteModel,
  type Site,
  siteSchema,
  stateSummary,
} from "@hoopstay/house";
import { parse } from "yaml";

const fixture = (path: string): Record<string, unknown> =>
  parse(readFileSync(join(import.meta.dirname, "../../fixtures", `${path}.yaml`), "utf8"));

const without = (file: Record<string, unknown>, keys: readonly string[]) =>
  Object.fromEntries(Object.entries(file).filter(([key]) => !keys.includes(key)));

/** A house of the fixtures, with keys of its file replaced or left out. */
export function readHouse(
  name: string,
  change: Record<string, unknown> = {},
  drop: readonly string[] = [],
): House {
  const file = { ...without(fixture(`houses/${name}`), drop), ...change };
  const house = readHouseModel(houseSchema.parse(file), []);
  if (!house) throw new Error("the house is refused");
  return house;
}

export function readSite(
  name: string,
  change: Record<string, unknown> = {},
  drop: readonly string[] = [],
): Site {
  const file = { ...without(fixture(`sites/${name}`), drop), ...change };
  const site = readSiteModel(siteSchema.parse(file), []);
  if (!site) throw new Error("the site is refused");
  return site;
}

export const meta: ReviewMeta = {
  version: "9.8.7",
  digest: "d1g3st",
  date: "2026-11-12",
  files: { house: "", site: "" },
  inputs: [],
};

/** Every state of an evaluation as the report prints it: another way to the same gusts. */
const summariesOf = (evaluation: Evaluation): readonly StateSummary[] =>
  evaluation.holds.flatMap((hold) =>
    evaluation.states.map((state) => stateSummary(evaluation, state, hold, "A")),
  );

/** The lowest code speed of a state in a hold, as a real gust; K_d 0.85 and 0.6 written out. */
export function gustIn(evaluation: Evaluation, id: string, hold: "bare" | "fitted"): number {
  const found = summariesOf(evaluation).find((one) => one.id === id && one.hold === hold);
  if (!found) throw new Error(`no state ${id} ${hold}`);
  const speeds = found.checks.map(({ codeSpeed }) => codeSpeed.ASD);
  return Math.min(...speeds) * Math.sqrt(0.6 * 0.85);
}

/** The worst ASD ratio of a state when a real gust blows. */
export function ratioInGust(
  { house, site }: Evaluation,
  gust: number,
  id: string,
  hold: "bare" | "fitted",
): number {
  const mapSpeed = gust / Math.sqrt(0.6 * 0.85);
  const blown = evaluate(house, { ...site, basis: "gust", speed: gust, mapSpeed });
  const found = summariesOf(blown).find((one) => one.id === id && one.hold === hold);
  return Math.max(...(found?.checks.map(({ ratio }) => ratio.ASD) ?? []));
}

export function row(
  name: string,
  side: AnchorRow["side"],
  along: number,
  change: Partial<AnchorRow> = {},
): AnchorRow {
  return {
    name,
    side,
    along,
    across: side === "left" ? -2.7 : side === "right" ? 2.7 : 0,
    angle: Math.PI / 3,
    lead: "out",
    toward: side === "left" ? [-1, 0] : [1, 0],
    pull: 2000,
    upright: 1732,
    level: 1000,
    allowable: 4000,
    ratio: 0.5,
    proof: 2500,
    state: "all shut",
    direction: "+x (right)",
    ...change,
  };
}

export const sixRows: readonly AnchorRow[] = [
  row("L1", "left", 5),
  row("L2", "left", 0),
  row("L3", "left", -5),
  row("R1", "right", 5),
  row("R2", "right", 0),
  row("R3", "right", -5, { pull: 2600, proof: 3250 }),
];

export function layout(
  anchors: readonly AnchorRow[] = sixRows,
  change: { readonly holds?: boolean; readonly gust?: number } = {},
): LayoutReview {
  const { holds = true, gust = Number.POSITIVE_INFINITY } = change;
  return {
    perRail: anchors.length / 2,
    anchors,
    held: true,
    carriesLeast: true,
    holds,
    oneMissing: null,
    joint: {
      factor: holds ? 1.2 : 0.8,
      holds,
      gust,
      state: "left side up",
      direction: "+x (right)",
      loadCase: 1,
      weight: "low",
      combination: "0.6 D + 0.6 W",
      certificate: null,
    },
    remarks: [],
  };
}

export function kind(every: LayoutReview | null, change: Partial<KindReview> = {}): KindReview {
  return {
    id: "screw",
    words: "4 in screw anchor",
    basis: "3 pull tests here",
    allowable: 4000,
    governs: "ground",
    reason: null,
    notChecked: ["eye"],
    findings: ["The plate lies above the frost line."],
    angle: Math.PI / 3,
    lead: "out",
    every,
    shut: null,
    short: null,
    ...change,
  };
}

export function holdOf(change: Partial<HoldReview> = {}): HoldReview {
  return {
    holds: true,
    ground: {
      words: ["Soil class 4B, clay-like, rated wet."],
      clues: [],
      findOut: [["Pull tests: set three and pull them."]],
    },
    headline: ["Holds."],
    fitted: null,
    kinds: [],
    ballast: [],
    tow: null,
    pulls: { kinds: [], next: [] },
    ...change,
  };
}

export const mph = 0.44704;
