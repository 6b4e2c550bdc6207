import { type Citation, cite, constant, formula, judged } from "@hoopstay/core";
import type { Convention } from "./tube.ts";

export const designWallFactor = constant(
  "design-wall-factor",
  "f_t",
  "design wall over nominal wall, electric-resistance-welded tube",
  0.93,
  "ratio",
  cite("aisc-360-22", "section B4.2", "read"),
);

export const cautiousWallFactor = constant(
  "cautious-wall-factor",
  "f_t",
  "design wall over nominal wall, tube outside the listed standards",
  0.93,
  "ratio",
  judged("B4.2 of AISC 360-22 is written for listed tube; applied to any other, it errs safe"),
);

const fullWallFactor = (citation: Citation) =>
  constant(
    "full-wall-factor",
    "f_t",
    "design wall over nominal wall, full wall",
    1,
    "ratio",
    citation,
  );

export const designWall = formula({
  id: "design-wall",
  symbol: "t",
  name: "design wall",
  measure: "length",
  arguments: [
    ["f_t", "design wall over nominal wall", "ratio"],
    ["t_nom", "nominal wall", "length"],
  ],
  expression: "f_t * t_nom",
  citation: cite("aisc-360-22", "section B4.2", "read"),
  evaluate: (factor, nominal) => factor * nominal,
});

export interface ConventionRules {
  /** Design wall over nominal wall, with its citation. */
  readonly wallFactor: ReturnType<typeof constant>;
  /** Mid-line (Bredt) formulas, or the annex B formulas of the European standards. */
  readonly torsion: "mid-line" | "annex B";
  /** Whether steel is taken at 490 lb/ft3 or at 7850 kg/m3. */
  readonly steel: "490 lb/ft3" | "7850 kg/m3";
  /** False where no listed standard stands behind the tube: every strength line says so. */
  readonly listed: boolean;
  /** Where the corner radii come from. */
  readonly corners: Citation;
}

const aiscCorners = cite(
  "aisc-shapes-15",
  "outside radius 2 t, inside t: reproduces 146 square and rectangular rows",
  "second-hand",
);

const fullWallCorners = judged(
  "A1085 and A1065 allow larger corners than 2 t; 2 t is kept as for A500, within 2 % of area",
);

/** The rules of each convention. `SI` throughout; factors are ratios. */
export const conventionRules: Readonly<Record<Convention, ConventionRules>> = {
  AISC: {
    wallFactor: designWallFactor,
    torsion: "mid-line",
    steel: "490 lb/ft3",
    listed: true,
    corners: aiscCorners,
  },
  "ASTM A1085": {
    wallFactor: fullWallFactor(cite("aisc-360-22", "section B4.2", "read")),
    torsion: "mid-line",
    steel: "490 lb/ft3",
    listed: true,
    corners: fullWallCorners,
  },
  "ASTM A1065": {
    wallFactor: fullWallFactor(cite("aisc-360-22", "section B4.2", "read")),
    torsion: "mid-line",
    steel: "490 lb/ft3",
    listed: true,
    corners: fullWallCorners,
  },
  "EN 10219-2": {
    wallFactor: fullWallFactor(cite("en-10219-2", "annex B", "memory")),
    torsion: "annex B",
    steel: "7850 kg/m3",
    listed: true,
    corners: cite("en-10219-2", "annex B, nominal corner radii for calculation", "memory"),
  },
  "EN 10210-2": {
    wallFactor: fullWallFactor(cite("en-10210-2", "annex B", "memory")),
    torsion: "annex B",
    steel: "7850 kg/m3",
    listed: true,
    corners: cite("en-10210-2", "annex B, nominal corner radii for calculation", "memory"),
  },
  other: {
    wallFactor: cautiousWallFactor,
    torsion: "mid-line",
    steel: "490 lb/ft3",
    listed: false,
    corners: judged("corners of tube outside the listed standards taken as for A500"),
  },
};
