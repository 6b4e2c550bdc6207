import { type Citation, cite, constant, type Formula, formula, type Measure } from "@hoopstay/core";

/** Resistance and safety factor of a kind of limit state, with the steps that apply them. */
export interface FactorPair {
  readonly measure: Measure;
  readonly phi: ReturnType<typeof constant>;
  readonly omega: ReturnType<typeof constant>;
  /** phi R_n. */
  readonly design: Formula<readonly [number]>;
  /** R_n / Omega. */
  readonly allowable: Formula<readonly [number]>;
}

function pair(
  id: string,
  of: string,
  measure: Measure,
  [phi, omega]: readonly [phi: number, omega: number],
  citation: Citation,
): FactorPair {
  const nominal = [["R_n", `nominal strength, ${of}`, measure]] as const;
  return {
    measure,
    phi: constant(`${id}-phi`, "phi", `resistance factor, ${of}`, phi, "ratio", citation),
    omega: constant(`${id}-omega`, "Omega", `safety factor, ${of}`, omega, "ratio", citation),
    design: formula({
      id: `${id}-design`,
      symbol: "R_LRFD",
      name: `design strength, ${of}`,
      measure,
      arguments: nominal,
      expression: `${phi} * R_n`,
      citation,
      evaluate: (strength) => phi * strength,
    }),
    allowable: formula({
      id: `${id}-allowable`,
      symbol: "R_ASD",
      name: `allowable strength, ${of}`,
      measure,
      arguments: nominal,
      expression: `R_n / ${omega}`,
      citation,
      evaluate: (strength) => strength / omega,
    }),
  };
}

const aisc = (place: string) => cite("aisc-360-22", place, "read");

/** phi and Omega of members, AISC 360-22. */
export const memberFactors = {
  tensionYield: pair("member-yield", "tension, yielding", "force", [0.9, 1.67], aisc("D2(a)")),
  tensionRupture: pair("member-rupture", "tension, rupture", "force", [0.75, 2], aisc("D2(b)")),
  compression: pair("member-compression", "compression", "force", [0.9, 1.67], aisc("E1")),
  flexure: pair("member-flexure", "flexure", "moment", [0.9, 1.67], aisc("F1")),
  shear: pair("member-shear", "shear", "force", [0.9, 1.67], aisc("G1")),
  torsion: pair("member-torsion", "torsion", "moment", [0.9, 1.67], aisc("H3.1")),
} as const satisfies Record<string, FactorPair>;
