import type { Chapter } from "@hoopstay/core";
import {
  type Angle,
  angleArea,
  angleCentroid,
  angleSecondMoment,
  angleTorsionConstant,
  conventionRules,
  designWall,
  flatArea,
  flatTorsionConstant,
  flatTorsionModulus,
  properties,
  type RectangularTube,
  type RoundTube,
  radiusOfGyration,
  rectangleSecondMoment,
  roundArea,
  roundElasticModulus,
  roundPlasticModulus,
  roundSecondMoment,
  roundTorsionConstant,
  roundTorsionModulus,
  type SectionProperties,
  type Tube,
} from "@hoopstay/section";
import { rectangularSteps } from "./hollow-steps.ts";
import { mustAgree } from "./must-agree.ts";

type Worked = Partial<SectionProperties>;

/**
 * Properties of a section from its design wall, step by step. Left out: moduli of flats and angles and
 * the least radius of an angle, which no formula is declared for.
 */
export function sectionSteps(chapter: Chapter, tube: Tube): void {
  const worked = worksOf(chapter, tube);
  const computed = properties(tube);
  for (const [name, value] of Object.entries(worked)) {
    const known = computed[name as keyof SectionProperties] as number;
    mustAgree(`the section's ${name}`, value as number, known, known);
  }
}

function worksOf(chapter: Chapter, tube: Tube): Worked {
  switch (tube.kind) {
    case "round":
      return roundSteps(chapter, tube.outside, wallStep(chapter, tube));
    case "rectangular":
      return rectangularSteps(chapter, tube, wallStep(chapter, tube));
    case "bar":
      return roundSteps(chapter, tube.diameter, tube.diameter / 2);
    case "flat":
      return flatSteps(chapter, tube.width, tube.thickness);
    case "angle":
      return angleSteps(chapter, tube);
  }
}

function wallStep(chapter: Chapter, { convention, wall }: RoundTube | RectangularTube): number {
  const factor = chapter.work(conventionRules[convention].wallFactor, []);
  return chapter.work(designWall, [factor, wall]);
}

function roundSteps(chapter: Chapter, outside: number, t: number): Worked {
  const area = chapter.work(roundArea, [outside, t]);
  const secondMomentX = chapter.work(roundSecondMoment, [outside, t]);
  const elasticModulusX = chapter.work(roundElasticModulus, [secondMomentX, outside]);
  const plasticModulusX = chapter.work(roundPlasticModulus, [outside, t]);
  const radiusX = chapter.work(radiusOfGyration, [secondMomentX, area]);
  const torsionConstant = chapter.work(roundTorsionConstant, [secondMomentX]);
  const torsionModulus = chapter.work(roundTorsionModulus, [torsionConstant, outside]);
  return {
    area,
    secondMomentX,
    elasticModulusX,
    plasticModulusX,
    radiusX,
    torsionConstant,
    torsionModulus,
  };
}

function flatSteps(chapter: Chapter, width: number, t: number): Worked {
  const area = chapter.work(flatArea, [width, t]);
  const secondMomentX = chapter.work(rectangleSecondMoment, [width, t], { symbol: "I_x" });
  const secondMomentY = chapter.work(rectangleSecondMoment, [t, width], { symbol: "I_y" });
  const radiusX = chapter.work(radiusOfGyration, [secondMomentX, area], { symbol: "r_x" });
  const radiusY = chapter.work(radiusOfGyration, [secondMomentY, area], { symbol: "r_y" });
  const torsionConstant = chapter.work(flatTorsionConstant, [width, t]);
  const torsionModulus = chapter.work(flatTorsionModulus, [width, t]);
  return { area, secondMomentX, secondMomentY, radiusX, radiusY, torsionConstant, torsionModulus };
}

function angleSteps(chapter: Chapter, { legs: [upright, lying], thickness: t }: Angle): Worked {
  const area = chapter.work(angleArea, [upright, lying, t]);
  const y = chapter.work(angleCentroid, [upright, lying, t], { symbol: "y_c" });
  const x = chapter.work(angleCentroid, [lying, upright, t], { symbol: "x_c" });
  const secondMomentX = chapter.work(angleSecondMoment, [upright, lying, t, area, y], {
    symbol: "I_x",
  });
  const secondMomentY = chapter.work(angleSecondMoment, [lying, upright, t, area, x], {
    symbol: "I_y",
  });
  const radiusX = chapter.work(radiusOfGyration, [secondMomentX, area], { symbol: "r_x" });
  const radiusY = chapter.work(radiusOfGyration, [secondMomentY, area], { symbol: "r_y" });
  const torsionConstant = chapter.work(angleTorsionConstant, [area, t]);
  return { area, secondMomentX, secondMomentY, radiusX, radiusY, torsionConstant };
}
