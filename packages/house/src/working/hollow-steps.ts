import type { Chapter } from "@hoopstay/core";
import {
  aiscTorsionModulus,
  bredtTorsionConstant,
  coldFormedTorsionConstant,
  coldFormedTorsionModulus,
  conventionRules,
  cornerRadii,
  hollowArea,
  hollowElasticModulus,
  hollowPlasticModulus,
  hollowSecondMoment,
  midLineArea,
  midLineLength,
  type RectangularTube,
  radiusOfGyration,
  roundedRectangleArea,
  roundedRectanglePlasticModulus,
  roundedRectangleSecondMoment,
  type SectionProperties,
} from "@hoopstay/section";

/** Sides of a rectangular tube, its wall, and its corner radii over the wall, m. */
interface Sides {
  readonly depth: number;
  readonly width: number;
  readonly t: number;
  readonly corners: { readonly outside: number; readonly inside: number };
}

/** Steel area of a rectangular tube: its outer outline less the inner one. */
export function hollowAreaStep(chapter: Chapter, sides: Sides): number {
  const [outer, inner] = outlines(sides);
  return chapter.work(hollowArea, [
    chapter.work(roundedRectangleArea, outer, { symbol: "A_o" }),
    chapter.work(roundedRectangleArea, inner, { symbol: "A_i" }),
  ]);
}

/** Properties of a rectangular tube from its wall t, step by step. */
export function rectangularSteps(
  chapter: Chapter,
  tube: RectangularTube,
  t: number,
): Partial<SectionProperties> {
  const { depth, width, convention } = tube;
  const corners = cornerRadii(convention, tube.wall);
  const sides = { depth, width, t, corners };
  const area = hollowAreaStep(chapter, sides);
  const x = bendingSteps(chapter, sides, area, "x");
  const y =
    depth === width
      ? x
      : bendingSteps(chapter, { ...sides, depth: width, width: depth }, area, "y");
  const radius = ((corners.outside + corners.inside) / 2) * t;
  const p = chapter.work(midLineLength, [depth, width, t, radius]);
  const enclosed = chapter.work(midLineArea, [depth, width, t, radius]);
  const annex = conventionRules[convention].torsion === "annex B";
  const constant = annex ? coldFormedTorsionConstant : bredtTorsionConstant;
  const torsionConstant = chapter.work(constant, [enclosed, t, p]);
  const torsionModulus = annex
    ? chapter.work(coldFormedTorsionModulus, [torsionConstant, enclosed, t, p])
    : chapter.work(aiscTorsionModulus, [depth, width, t]);
  return {
    area,
    secondMomentX: x.I,
    elasticModulusX: x.S,
    plasticModulusX: x.Z,
    radiusX: x.r,
    secondMomentY: y.I,
    elasticModulusY: y.S,
    plasticModulusY: y.Z,
    radiusY: y.r,
    torsionConstant,
    torsionModulus,
  };
}

type Outline = readonly [depth: number, width: number, radius: number];

const outlines = ({ depth, width, t, corners }: Sides): readonly [Outline, Outline] => [
  [depth, width, corners.outside * t],
  [depth - 2 * t, width - 2 * t, corners.inside * t],
];

function bendingSteps(chapter: Chapter, sides: Sides, area: number, axis: "x" | "y") {
  const [outer, inner] = outlines(sides);
  const named = (symbol: string) => ({ symbol: `${symbol}_${axis}` });
  const I = chapter.work(
    hollowSecondMoment,
    [
      chapter.work(roundedRectangleSecondMoment, outer, { symbol: "I_o" }),
      chapter.work(roundedRectangleSecondMoment, inner, { symbol: "I_i" }),
    ],
    named("I"),
  );
  const S = chapter.work(hollowElasticModulus, [I, sides.depth], named("S"));
  const Z = chapter.work(
    hollowPlasticModulus,
    [
      chapter.work(roundedRectanglePlasticModulus, outer, { symbol: "Z_o" }),
      chapter.work(roundedRectanglePlasticModulus, inner, { symbol: "Z_i" }),
    ],
    named("Z"),
  );
  return { I, S, Z, r: chapter.work(radiusOfGyration, [I, area], named("r")) };
}
