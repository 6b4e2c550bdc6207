import process from "node:process";
import { Refusal } from "@hoopstay/core";
import { type Inputs, readInputs } from "@hoopstay/file";
import { type Evaluation, evaluate, makeReview } from "@hoopstay/house";
import fc from "fast-check";
import { Draw } from "./draw.ts";
import { type Tree, written } from "./entry.ts";
import { type HouseKinds, houseTree } from "./whole-house.ts";
import { type SiteKinds, siteTree } from "./whole-site.ts";

/** A house file and a site file. */
export interface Farm {
  readonly house: Tree;
  readonly site: Tree;
}

type Kinds = Partial<HouseKinds> & SiteKinds;

export const farms = ({ plainTubes = false, level = false }: Kinds = {}): fc.Arbitrary<Farm> =>
  fc.gen().map((g) => {
    const draw = new Draw(g, g(fc.boolean));
    const house = houseTree(draw, { plainTubes });
    return { house, site: siteTree(draw, house, { level }) };
  });

export function readTexts(house: string, site: string): Inputs {
  return readInputs(
    "house",
    "site",
    (name) => (name === "house" ? house : site),
    () => "digest",
  );
}

export const readFarm = ({ house, site }: Farm): Inputs => readTexts(written(house), written(site));

/** Both models of a farm; undefined where its files are refused with codes. */
export function readOrRefused(farm: Farm): Inputs | undefined {
  try {
    return readFarm(farm);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** A farm evaluated; undefined where its files are refused, a load too many for the ground, say. */
export function evaluatedOrRefused(farm: Farm): Evaluation | undefined {
  const inputs = readOrRefused(farm);
  try {
    return inputs && evaluated(inputs);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

export const evaluated = ({ house, site }: Inputs): Evaluation => evaluate(house, site);

export const reviewOf = (evaluation: Evaluation, { rows, digest, date, files }: Inputs) =>
  makeReview(evaluation, { version: "0", digest, date, files, inputs: rows }, { full: false });

/** Seed of every law of whole houses, so that a failure repeats. */
export const seed = 71_630;

/** Houses that every law is tried on: as many as HOUSES says, 2,000 in the gates, else fewer. */
export const houses = Number(process.env.HOUSES ?? (process.env.CI ? 2000 : 200));

/** Tries a law on farms of a kind, or on every so-manieth of them; a failure prints both files. */
export function forFarms(kinds: Kinds, law: (farm: Farm, inputs: Inputs) => void, oneIn = 1): void {
  let met = 0;
  fc.assert(
    fc.property(farms(kinds), (farm) => {
      const inputs = readOrRefused(farm);
      if (!inputs) return;
      met += 1;
      try {
        law(farm, inputs);
      } catch (error) {
        const { message } = error as Error;
        throw new Error(`${message}\n${written(farm.house)}---\n${written(farm.site)}`);
      }
    }),
    { seed, numRuns: Math.ceil(houses / oneIn), endOnFailure: true },
  );
  if (met < (0.7 * houses) / oneIn) throw new Error(`only ${met} of the houses are read`);
}
