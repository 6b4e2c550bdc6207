import {
  archBucklingLength,
  compressionStrength,
  eulerLoad,
  interaction,
  memberFactors,
  memberSection,
  plasticMoment,
  type Strength,
  slendernessLimits,
} from "@hoopstay/strength";
import { type Computations, columns, type Given } from "../published/given.ts";
import { covered, memberColumn, steelOfYield } from "./member-columns.ts";

/** Strength of one square metre at a slenderness: a stress. */
function criticalStress(given: Given): Strength {
  const bar = memberSection({ kind: "bar", diameter: 0.02 });
  const unit = { ...bar, area: 1, radiusX: 0.1, radiusY: 0.1 };
  const length = 0.1 * given.number("lambda_c");
  const lengths = { bucklingX: length, bucklingY: length };
  return covered(compressionStrength(unit, steelOfYield(given.number("yield")), lengths));
}

const pairOf = (given: Given, key: string) => given.numbers(key) as [number, number];

const factorsOf = (given: Given) => memberFactors[given.text("of") as keyof typeof memberFactors];

const archLength = (given: Given): number => {
  const half = given.number("half");
  return archBucklingLength(2 * half, half);
};

/** How strengths of members and what they rest on are computed, SI. */
export const memberComputations: Computations = {
  member: memberColumn,
  "slenderness limits": (given, column) =>
    slendernessLimits[column as keyof typeof slendernessLimits].evaluate(
      steelOfYield(1).modulus,
      given.number("yield"),
    ),
  "load in the middle of a span": (given) => {
    const moment = plasticMoment.evaluate(given.number("yield"), given.number("Z"));
    const available = memberFactors.flexure.design.evaluate(moment);
    return (4 * available) / given.number("span") / given.number("factor");
  },
  interaction: (given) =>
    interaction(...pairOf(given, "P"), ...pairOf(given, "M_x"), ...pairOf(given, "M_y")),
  "available critical stress": columns({
    phiF_cr: (given) => criticalStress(given).LRFD,
    "F_cr/Omega": (given) => criticalStress(given).ASD,
  }),
  "elastic buckling load": (given) =>
    eulerLoad.evaluate(given.number("modulus"), given.number("I"), given.number("length")),
  "arch buckling": (given) => eulerLoad.evaluate(1, 1, archLength(given)),
  "arch length": (given) => archLength(given) / given.number("half"),
  "resistance factors": columns({
    phi: (given) => factorsOf(given).phi.value,
    Omega: (given) => factorsOf(given).omega.value,
  }),
};
