import {
  ballastPieces,
  correlationFactors,
  correlationTable,
  draggingFrictionHigh,
  draggingFrictionLow,
  factorScatterKnown,
  factorScatterUnknown,
  grossTractionRatio,
  highwayPractice,
  motionResistanceRatio,
  netTractionRatio,
  proofLoad,
  quantile95,
  sidewaysLimit,
  slidingPull,
  startingFriction,
  submergedFactor,
  towPull,
  ukCorrelationTable,
  upwardLimit,
  weightOfPiece,
} from "@hoopstay/ground";
import { describe, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import { readPublished } from "../published/read-published.ts";

export const pound = 0.45359237 * 9.80665;
const inch = 0.0254;
export const degree = Math.PI / 180;

const worth: Readonly<Record<string, number>> = { "1": 1, lb: pound, in: inch };

type Given = Readonly<Record<string, unknown>>;
type Compute = (given: Given, column: string) => number | undefined;

const number = (given: Given, key: string): number => Number(given[key]);

/** The column asked for out of several, none where it is not computed. */
const column =
  (columns: Readonly<Record<string, (given: Given) => number>>): Compute =>
  (given, name) =>
    columns[name]?.(given);

const traction = (given: Given) => {
  const at = [number(given, "mobility"), number(given, "slip")] as const;
  return { gross: grossTractionRatio.evaluate(...at), rho: motionResistanceRatio.evaluate(...at) };
};

const factorsOf = (given: Given) =>
  correlationFactors(
    number(given, "n"),
    given.table === "British" ? ukCorrelationTable : correlationTable,
  );

/** How each quantity of a published file is computed, SI. */
const computations: Readonly<Record<string, Compute>> = {
  "factor for the 5 % fractile": column({
    known: (given) => factorScatterKnown.evaluate(number(given, "n")),
    unknown: (given) => {
      const n = number(given, "n");
      return factorScatterUnknown.evaluate(quantile95(n - 1), n);
    },
  }),
  "95 % quantile of Student's t": (given) => quantile95(number(given, "freedom")),
  "correlation factors": column({
    xi_1: (given) => factorsOf(given)[0],
    xi_2: (given) => factorsOf(given)[1],
  }),
  "head movement at failure": column({
    up: () => upwardLimit.value,
    sideways: () => sidewaysLimit.value,
  }),
  "proof load": (given) => proofLoad.evaluate(number(given, "design") * pound),
  "proof test": (_, name) => {
    const { alignment, steps, minutesAtStep, minutesAtTop, accepted } = highwayPractice;
    if (name.startsWith("step_")) return steps[Number(name.slice(5)) - 1];
    const [least, most] = minutesAtStep;
    const others = { alignment, least, most, top: minutesAtTop, creep: accepted.movement };
    return others[name as keyof typeof others];
  },
  "tow pull": (given) =>
    towPull.evaluate(
      number(given, "weight") * pound,
      number(given, "friction"),
      Math.atan(number(given, "percent") / 100),
    ),
  "dragging friction": column({
    running: () => draggingFrictionLow.value,
    highest: () => draggingFrictionHigh.value,
    starting: () => startingFriction.value,
  }),
  "traction ratios": column({
    resistance: (given) => traction(given).rho,
    net: (given) => netTractionRatio.evaluate(traction(given).gross, traction(given).rho),
  }),
  "weight over sliding pull": (given) => {
    const at = [number(given, "degrees") * degree, number(given, "friction")] as const;
    return 1 / slidingPull.evaluate(1, 1, ...at);
  },
  "weight of a piece": (given) => {
    const piece = ballastPieces.find(({ id }) => id === given.piece);
    return piece && weightOfPiece(piece);
  },
  "submerged factor": (given) => submergedFactor.evaluate(62.4, number(given, "density")),
};

type Folder = Parameters<typeof readPublished>[0];

/** Runs every published case of these sources whose quantity is computed here. */
export function publishedTests(folders: readonly Folder[], quantities: readonly string[]): void {
  for (const file of folders.flatMap((folder) => readPublished(folder))) {
    if (!quantities.includes(file.quantity)) continue;
    const compute = computations[file.quantity];
    if (!compute) throw new Error(`${file.quantity} is not computed here`);
    describe(file.file, () => {
      for (const one of file.cases) {
        for (const value of one.values) {
          test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}`, () => {
            const computed = compute(one.given, value.quantity) ?? Number.NaN;
            expectPublished(computed / (worth[value.unit] ?? Number.NaN), value);
          });
        }
      }
    });
  }
}
