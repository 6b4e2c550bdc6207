import { cite, constant, judged } from "@hoopstay/core";
import type { InsideLoad, ParentLoad } from "./parent-loads.ts";
import type { DirectedLoad, WindSurfaces } from "./wind-surfaces.ts";

const figure = cite("asce-7-16", "figure 27.3-8", "second-hand");
export const diagonalShare = constant(
  "diagonal-share",
  "c_3",
  "share of each axis' horizontal force in load case 3",
  0.75,
  "ratio",
  figure,
);
export const torsionShare = constant(
  "torsion-share",
  "c_4",
  "share of each axis' horizontal force in load case 4",
  0.5625,
  "ratio",
  figure,
);
export const eccentricity = constant(
  "eccentricity",
  "e/B",
  "eccentricity of load cases 2 and 4 over the size across the wind",
  0.15,
  "ratio",
  cite("asce-7-16", "figure 27.3-8", "memory"),
);
export const verticalPressureCitation = judged(
  "suctions of two directions do not add; either parent's vertical pressure in full, both run",
);

/** Numbers of one case in a case table: F_x, F_y, F_z, M_x, M_y, M_z, F_x without the arch. */
export const caseStride = 7;

/** Load cases of one arrangement, per unit of K_d q_h (m2, m3). */
export interface CaseTable {
  readonly count: number;
  readonly components: Float64Array;
  /** What each case is made of, told only when asked: the checks need numbers alone. */
  readonly cases: readonly WindCase[];
}

/** What a case is made of. */
export interface WindCase {
  readonly number: 1 | 2 | 3 | 4;
  readonly across: DirectedLoad | null;
  readonly along: DirectedLoad | null;
  /** Which parent's vertical pressure acts. */
  readonly vertical: "across" | "along";
  readonly inside: number;
  /** Sign of the torsional moment of cases 2 and 4. */
  readonly twist: 0 | 1 | -1;
}

const nothing: ParentLoad = {
  fx: 0,
  fxArch: 0,
  fy: 0,
  fz: 0,
  mxHorizontal: 0,
  mxVertical: 0,
  myHorizontal: 0,
  myVertical: 0,
  mz: 0,
};

/** Writes one case: `share` of the horizontal forces, one parent's vertical pressure, inside. */
function writeCase(
  into: Float64Array,
  place: number,
  share: number,
  across: ParentLoad,
  along: ParentLoad,
  vertical: ParentLoad,
  insideCoefficient: number,
  inside: InsideLoad,
): void {
  const fx = share * (across.fx + along.fx);
  into[place] = fx;
  into[place + 1] = share * (across.fy + along.fy) + insideCoefficient * inside.fy;
  into[place + 2] = vertical.fz + insideCoefficient * inside.fz;
  into[place + 3] =
    share * (across.mxHorizontal + along.mxHorizontal) +
    vertical.mxVertical +
    insideCoefficient * inside.mx;
  into[place + 4] = share * (across.myHorizontal + along.myHorizontal) + vertical.myVertical;
  into[place + 5] = share * (across.mz + along.mz);
  into[place + 6] = fx - share * across.fxArch;
}

/** Load cases 1 (each direction) and 3 (the four diagonals): those the single checks run. */
export function singleCheckCases(
  surfaces: WindSurfaces,
  insideCoefficients: readonly number[],
): CaseTable {
  const { across, along, inside, covering } = surfaces;
  const parents = covering === "bare" ? 1 : 2;
  const perAcross = across[0]?.length ?? 0;
  const perAlong = along[0]?.length ?? 0;
  const count =
    insideCoefficients.length * (2 * perAcross + 2 * perAlong + 4 * parents * perAcross * perAlong);
  const components = new Float64Array(count * caseStride);
  eachCase(surfaces, insideCoefficients, { components, place: 0, inside, cases: null });
  let made: WindCase[] | undefined;
  return {
    count,
    components,
    get cases() {
      if (made) return made;
      made = [];
      eachCase(surfaces, insideCoefficients, { components, place: 0, inside, cases: made });
      return made;
    },
  };
}

/** Where cases go: their numbers, and what they are made of where that is asked for. */
interface CaseSink {
  readonly components: Float64Array;
  place: number;
  readonly inside: InsideLoad;
  readonly cases: WindCase[] | null;
}

function put(
  sink: CaseSink,
  across: DirectedLoad | null,
  along: DirectedLoad | null,
  vertical: "across" | "along",
  inside: number,
): void {
  const number = across && along ? 3 : 1;
  if (sink.cases) {
    sink.cases.push({ number, across, along, vertical, inside, twist: 0 });
    return;
  }
  const acrossLoad = across ? across.load : nothing;
  const alongLoad = along ? along.load : nothing;
  const lifting = vertical === "across" ? acrossLoad : alongLoad;
  const share = number === 3 ? diagonalShare.value : 1;
  writeCase(
    sink.components,
    sink.place,
    share,
    acrossLoad,
    alongLoad,
    lifting,
    inside,
    sink.inside,
  );
  sink.place += caseStride;
}

/** Load cases 1 and 3 in their fixed order. */
function eachCase(
  { across, along, covering }: WindSurfaces,
  insideCoefficients: readonly number[],
  sink: CaseSink,
): void {
  for (const inside of insideCoefficients) {
    for (const loads of across) for (const a of loads) put(sink, a, null, "across", inside);
    for (const loads of along) for (const b of loads) put(sink, null, b, "along", inside);
    for (const acrossLoads of across) {
      for (const alongLoads of along) {
        for (const a of acrossLoads) {
          for (const b of alongLoads) {
            put(sink, a, b, "across", inside);
            if (covering !== "bare") put(sink, a, b, "along", inside);
          }
        }
      }
    }
  }
}

/**
 * Load cases 2 and 4, with torsion both ways. They act on the all-at-once equilibrium only; the
 * single checks have no torsion to feel.
 *
 * @param sizes size of the shell across each wind: its length for wind across, its span along
 */
export function torsionCases(
  surfaces: WindSurfaces,
  insideCoefficients: readonly number[],
  sizes: { readonly across: number; readonly along: number },
): CaseTable {
  const single = singleCheckCases(surfaces, insideCoefficients);
  const count = 2 * single.count;
  const components = new Float64Array(count * caseStride);
  const cases: WindCase[] = [];
  for (const of of single.cases) {
    const share = of.number === 1 ? diagonalShare.value : torsionShare.value;
    const a = of.across?.load ?? nothing;
    const b = of.along?.load ?? nothing;
    const lifting = of.vertical === "across" ? a : b;
    const twisting =
      share * eccentricity.value * (Math.abs(a.fx) * sizes.across + Math.abs(b.fy) * sizes.along);
    for (const twist of [1, -1] as const) {
      const place = cases.length * caseStride;
      writeCase(components, place, share, a, b, lifting, of.inside, surfaces.inside);
      components[place + 5] = (components[place + 5] as number) + twist * twisting;
      cases.push({ ...of, number: of.number === 1 ? 2 : 4, twist });
    }
  }
  return { count, components, cases };
}
