import {
  correlationFactors,
  correlationTable,
  factorScatterKnown,
  factorScatterUnknown,
  highwayPractice,
  proofLoad,
  quantile95,
  sidewaysLimit,
  ukCorrelationTable,
  upwardLimit,
} from "@hoopstay/ground";
import { type Computations, columns, type Given } from "../published/given.ts";

const factorsOf = (given: Given): readonly number[] => {
  const table = given.text("table") === "British" ? ukCorrelationTable : correlationTable;
  return correlationFactors(given.number("n"), table);
};

/** How statistics of pull tests, and what counts as a test, are computed, SI. */
export const pullTestComputations: Computations = {
  "factor for the 5 % fractile": columns({
    known: (given) => factorScatterKnown.evaluate(given.number("n")),
    unknown: (given) => {
      const n = given.number("n");
      return factorScatterUnknown.evaluate(quantile95(n - 1), n);
    },
  }),
  "95 % quantile of Student's t": (given) => quantile95(given.number("freedom")),
  "correlation factors": columns({
    xi_1: (given) => factorsOf(given)[0],
    xi_2: (given) => factorsOf(given)[1],
  }),
  "head movement at failure": columns({
    up: () => upwardLimit.value,
    sideways: () => sidewaysLimit.value,
  }),
  "proof load": (given) => proofLoad.evaluate(given.number("design")),
  "proof test": (_, name) => {
    const { alignment, steps, minutesAtStep, minutesAtTop, accepted } = highwayPractice;
    if (name.startsWith("step_")) return steps[Number(name.slice(5)) - 1];
    const [least, most] = minutesAtStep;
    const others = { alignment, least, most, top: minutesAtTop, creep: accepted.movement };
    return others[name as keyof typeof others];
  },
};
