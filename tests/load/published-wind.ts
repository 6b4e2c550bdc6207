import type { PublishedCase, PublishedFile } from "../published/published-case.ts";
import { worthOf } from "./printed-units.ts";
import type { Given } from "./published-given.ts";
import { shapeComputations } from "./published-shape.ts";
import { siteComputations } from "./published-site.ts";

function givenOf(file: PublishedFile, { given, title }: PublishedCase): Given {
  const worth = (key: string): number => worthOf(file.units[key] ?? "1");
  const missing = (key: string): never => {
    throw new Error(`${title}: ${key} is not given as expected`);
  };
  return {
    has: (key) => given[key] !== undefined,
    number: (key) => (typeof given[key] === "number" ? given[key] * worth(key) : missing(key)),
    numbers: (key) =>
      Array.isArray(given[key]) ? given[key].map((one) => Number(one) * worth(key)) : missing(key),
    text: (key) => (typeof given[key] === "string" ? given[key] : missing(key)),
  };
}

const computations = { ...siteComputations, ...shapeComputations };

/** Whether a published file holds a quantity of wind. */
export const isWind = ({ quantity }: PublishedFile): boolean => quantity in computations;

/** The computed value of a printed number, in its printed unit. */
export function computeWind(file: PublishedFile, one: PublishedCase, column: string): number {
  const compute = computations[file.quantity];
  const value = compute?.(givenOf(file, one), column) ?? Number.NaN;
  return value / worthOf(file.units[column] ?? "1");
}
