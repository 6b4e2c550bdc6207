import {
  type Citation,
  cite,
  constant,
  type Formula,
  type Measure,
  madeFormula,
} from "@hoopstay/core";
import type { LimitState } from "./strength.ts";
import type { Worksheet } from "./worksheet.ts";

/** Resistance factor and safety factor of a kind of limit state, and the steps that use them. */
export interface ResistanceFactors {
  readonly phi: ReturnType<typeof constant>;
  readonly omega: ReturnType<typeof constant>;
  /** R_n / Omega, for a strength of this measure. */
  readonly allowable: (measure: Measure) => Formula<readonly [number, number]>;
  /** phi R_n. */
  readonly design: (measure: Measure) => Formula<readonly [number, number]>;
}

function factors(id: string, of: string, phi: number, omega: number, citation: Citation) {
  const steps = new Map<Measure, ReturnType<typeof availableStrength>>();
  const stepsOf = (measure: Measure) => {
    const found = steps.get(measure) ?? availableStrength(id, of, measure, citation);
    steps.set(measure, found);
    return found;
  };
  const ratio = (part: string, symbol: string, words: string, value: number) =>
    constant(`${id}-${part}`, symbol, `${words}, ${of}`, value, "ratio", citation);
  const made: ResistanceFactors = {
    phi: ratio("phi", "phi", "resistance factor", phi),
    omega: ratio("omega", "Omega", "safety factor", omega),
    allowable: (measure) => stepsOf(measure).allowable,
    design: (measure) => stepsOf(measure).design,
  };
  return made;
}

function availableStrength(id: string, of: string, measure: Measure, citation: Citation) {
  const allowable = madeFormula({
    id: `${id}-allowable-${measure}`,
    symbol: "R_ASD",
    name: `allowable strength, ${of}`,
    measure,
    arguments: [
      ["R_n", "nominal strength", measure],
      ["Omega", "safety factor", "ratio"],
    ],
    expression: "R_n / Omega",
    citation,
    evaluate: (nominal, omega) => nominal / omega,
  });
  const design = madeFormula({
    id: `${id}-design-${measure}`,
    symbol: "R_LRFD",
    name: `design strength, ${of}`,
    measure,
    arguments: [
      ["phi", "resistance factor", "ratio"],
      ["R_n", "nominal strength", measure],
    ],
    expression: "phi * R_n",
    citation,
    evaluate: (phi, nominal) => phi * nominal,
  });
  return { allowable, design };
}

const aisc = (place: string) => cite("aisc-360-22", place, "read");

/** Factors of the limit states used here. */
export const connectionFactors = {
  bolt: factors("bolt", "bolts", 0.75, 2, aisc("section J3.7 and J3.8")),
  bearing: factors("pin-bearing", "bearing and tear-out", 0.75, 2, aisc("sections J3.11 and J7")),
  sheetBearing: factors(
    "sheet-bearing",
    "bearing of thin walls",
    0.6,
    2.5,
    cite("aisi-s100", "section J3.3.1 (E3.3.1 before); Omega", "memory"),
  ),
  sheetDeformation: factors(
    "sheet-deformation",
    "bearing of thin walls, hole deformation limited",
    0.65,
    2.22,
    cite("aisi-s100", "section J3.3.2 (E3.3.2 before); Omega", "memory"),
  ),
  tensionYield: factors("tension-yield", "tension, yielding", 0.9, 1.67, aisc("D2, J4.1")),
  rupture: factors("rupture", "rupture", 0.75, 2, aisc("D2, D5, J4.1, J4.2")),
  compression: factors("compression", "compression", 0.9, 1.67, aisc("J4.4, E1")),
  flexure: factors("flexure", "flexure", 0.9, 1.67, aisc("F1")),
  weld: factors("weld", "fillet welds", 0.75, 2, aisc("table J2.5")),
  shearYield: factors("shear-yield", "shear, yielding", 1, 1.5, aisc("J4.2, equation J4-3")),
  face: factors(
    "face",
    "plastification and distortion of the face",
    1,
    1.5,
    cite("aisc-360-10", "tables K2.2 and K3.2", "second-hand"),
  ),
  punching: factors(
    "punching",
    "punching of the face",
    0.95,
    1.58,
    cite("aisc-360-10", "table K2.2", "second-hand"),
  ),
  sideWallYield: factors("side-wall-yield", "side walls, yielding", 1, 1.5, aisc("J10.2")),
  sideWallCrippling: factors(
    "side-wall-crippling",
    "side walls, crippling",
    0.75,
    2,
    aisc("J10.3"),
  ),
  sideWallBuckling: factors("side-wall-buckling", "side walls, buckling", 0.9, 1.67, aisc("J10.5")),
} as const satisfies Record<string, ResistanceFactors>;

/** A limit state out of its nominal strength, worked on a sheet. */
export function limitState(
  sheet: Worksheet,
  [id, name]: readonly [id: string, name: string],
  measure: Measure,
  nominal: number,
  { phi, omega, allowable, design }: ResistanceFactors,
): LimitState {
  const ASD = sheet.work(allowable(measure), [nominal, omega.value], { note: name });
  const LRFD = sheet.work(design(measure), [phi.value, nominal], { note: name });
  return { id, name, measure, nominal, ASD, LRFD };
}
