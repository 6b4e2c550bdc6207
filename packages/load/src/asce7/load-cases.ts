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
  /** What each case is made of. */
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

/**
 * Writes one case: `share` of the horizontal forces, one parent's vertical pressure, inside pressure
 * in full, and a twist about the upright axis.
 */
function writeCase(
  into: Float64Array,
  at: number,
  share: number,
  across: ParentLoad,
  along: ParentLoad,
  vertical: ParentLoad,
  insideCoefficient: number,
  inside: InsideLoad,
): void {
  const fx = share * (across.fx + along.fx);
  into[at] = fx;
  into[at + 1] = share * (across.fy + along.fy) + insideCoefficient * inside.fy;
  into[at + 2] = vertical.fz + insideCoefficient * inside.fz;
  into[at + 3] =
    share * (across.mxHorizontal + along.mxHorizontal) +
    vertical.mxVertical +
    insideCoefficient * inside.mx;
  into[at + 4] = share * (across.myHorizontal + along.myHorizontal) + vertical.myVertical;
  into[at + 5] = share * (across.mz + along.mz);
  into[at + 6] = fx - share * across.fxArch;
}

/** How many cases `writeCases` writes. */
function caseCount(
  { across, along, covering }: WindSurfaces,
  insideCoefficients: readonly number[],
): number {
  const parents = covering === "bare" ? 1 : 2;
  const perAcross = across[0]?.length ?? 0;
  const perAlong = along[0]?.length ?? 0;
  const each = 2 * perAcross + 2 * perAlong + 4 * parents * perAcross * perAlong;
  return insideCoefficients.length * each;
}

/** Writes load cases 1 (each direction) and 3 (the four diagonals) as rows, in their fixed order. */
export function writeCases(
  { across, along, inside, covering }: WindSurfaces,
  insideCoefficients: readonly number[],
  into: Float64Array,
): void {
  const share = diagonalShare.value;
  let at = 0;
  for (const value of insideCoefficients) {
    for (const loads of across) {
      for (const { load: a } of loads) {
        writeCase(into, at, 1, a, nothing, a, value, inside);
        at += caseStride;
      }
    }
    for (const loads of along) {
      for (const { load: b } of loads) {
        writeCase(into, at, 1, nothing, b, b, value, inside);
        at += caseStride;
      }
    }
    for (const acrossLoads of across) {
      for (const alongLoads of along) {
        for (const { load: a } of acrossLoads) {
          for (const { load: b } of alongLoads) {
            writeCase(into, at, share, a, b, a, value, inside);
            at += caseStride;
            if (covering === "bare") continue;
            writeCase(into, at, share, a, b, b, value, inside);
            at += caseStride;
          }
        }
      }
    }
  }
}

/** What the cases of `writeCases` are made of, in the same order. */
function casesOf(
  { across, along, covering }: WindSurfaces,
  insideCoefficients: readonly number[],
): WindCase[] {
  const cases: WindCase[] = [];
  for (const inside of insideCoefficients) {
    const one = { inside, twist: 0 } as const;
    for (const a of across.flat()) {
      cases.push({ number: 1, across: a, along: null, vertical: "across", ...one });
    }
    for (const b of along.flat()) {
      cases.push({ number: 1, across: null, along: b, vertical: "along", ...one });
    }
    for (const acrossLoads of across) {
      for (const alongLoads of along) {
        for (const a of acrossLoads) {
          for (const b of alongLoads) {
            const diagonal = { number: 3, across: a, along: b, ...one } as const;
            cases.push({ ...diagonal, vertical: "across" });
            if (covering !== "bare") cases.push({ ...diagonal, vertical: "along" });
          }
        }
      }
    }
  }
  return cases;
}

/** Load cases 1 and 3 of an arrangement; rows and cases are written out when they are read. */
class SingleCheckCases implements CaseTable {
  readonly count: number;
  private written: Float64Array | undefined;
  private told: readonly WindCase[] | undefined;

  constructor(
    private readonly surfaces: WindSurfaces,
    private readonly insideCoefficients: readonly number[],
  ) {
    this.count = caseCount(surfaces, insideCoefficients);
  }

  get components(): Float64Array {
    if (!this.written) {
      this.written = new Float64Array(this.count * caseStride);
      writeCases(this.surfaces, this.insideCoefficients, this.written);
    }
    return this.written;
  }

  get cases(): readonly WindCase[] {
    this.told ??= casesOf(this.surfaces, this.insideCoefficients);
    return this.told;
  }
}

/** Load cases 1 and 3 as a table: those the single checks run. */
export const singleCheckCases = (
  surfaces: WindSurfaces,
  insideCoefficients: readonly number[],
): CaseTable => new SingleCheckCases(surfaces, insideCoefficients);

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
  const parents = casesOf(surfaces, insideCoefficients);
  const components = new Float64Array(2 * parents.length * caseStride);
  const cases: WindCase[] = [];
  for (const of of parents) {
    const share = of.number === 1 ? diagonalShare.value : torsionShare.value;
    const a = of.across?.load ?? nothing;
    const b = of.along?.load ?? nothing;
    const lifting = of.vertical === "across" ? a : b;
    const twisting =
      share * eccentricity.value * (Math.abs(a.fx) * sizes.across + Math.abs(b.fy) * sizes.along);
    for (const twist of [1, -1] as const) {
      const at = cases.length * caseStride;
      writeCase(components, at, share, a, b, lifting, of.inside, surfaces.inside);
      components[at + 5] = (components[at + 5] as number) + twist * twisting;
      cases.push({ ...of, number: of.number === 1 ? 2 : 4, twist });
    }
  }
  return { count: cases.length, components, cases };
}
