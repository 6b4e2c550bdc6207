import { componentArchFactor } from "./component-arch.ts";
import { gustFactor } from "./constants.ts";
import { freeRoofSets } from "./free-roof.ts";
import { type HoopBorder, hoopBorders, hoopStretchCount } from "./hoop-section.ts";
import type { CaseTable } from "./load-cases.ts";
import type { Sense } from "./parent-loads.ts";
import type { RoofLoad } from "./roof-loads.ts";
import type { DirectedLoad, WindSurfaces } from "./wind-surfaces.ts";

/** The loads of one arrangement, with the table of single-check cases they belong to. */
export interface LoadsOfCases {
  readonly surfaces: WindSurfaces;
  readonly insideCoefficients: readonly number[];
  readonly table: CaseTable;
}

export type WindDirection = "+x" | "-x" | "+y" | "-y";

/** G C_p as for the whole house; 0.87 C_p as the standard's components; G C_N of a free roof. */
export type CoefficientForm = "G C_p" | "0.87 C_p" | "G C_N";

/** Which load case 1 of the table, and which coefficients, make a row. */
export interface HoopPressureSource {
  readonly caseIndex: number;
  readonly direction: WindDirection;
  readonly set: RoofLoad;
  readonly form: CoefficientForm;
}

/**
 * Pressure on one hoop per unit of K_d q_h, in house axes: outside coefficient on each stretch
 * between the borders of `hoopSection`, + toward the surface, and GC_pi, which pushes outward on all
 * of them. Below the rail's top the strips load the rail. Cases that load the hoop alike share a row.
 */
export interface HoopPressureRow {
  readonly outside: readonly number[];
  readonly inside: number;
  readonly sources: readonly HoopPressureSource[];
}

/** From G C_p to 0.87 C_p. */
const asComponent = componentArchFactor.value / gustFactor.value;

interface GrowingRow extends HoopPressureRow {
  readonly sources: HoopPressureSource[];
}

/** A row for each set, inside pressure and form of coefficient; equal ones as one. */
export function hoopRows(
  { insideCoefficients, table }: LoadsOfCases,
  sides: readonly (readonly DirectedLoad[])[],
  first: number,
  directions: readonly [WindDirection, WindDirection],
  outsideOf: (set: RoofLoad, sense: Sense) => number[],
): HoopPressureRow[] {
  const perInside = table.count / insideCoefficients.length;
  const rows: GrowingRow[] = [];
  /** Rows of the first inside pressure; those of the others follow each in their order. */
  const add = (
    place: number,
    direction: WindDirection,
    set: RoofLoad,
    form: CoefficientForm,
    outside: number[],
  ): void => {
    let at = 0;
    while (at < rows.length && !equal((rows[at] as GrowingRow).outside, outside)) {
      at += insideCoefficients.length;
    }
    let caseIndex = place;
    for (const inside of insideCoefficients) {
      const source = { caseIndex, direction, set, form };
      const known = rows[at];
      if (known) known.sources.push(source);
      else rows.push({ outside, inside, sources: [source] });
      at += 1;
      caseIndex += perInside;
    }
  };
  let place = first;
  for (const loads of sides) {
    for (const { sense, set } of loads) {
      if (!set) return [];
      const direction = directions[sense > 0 ? 0 : 1];
      const outside = outsideOf(set, sense);
      if (isFreeRoof(set)) add(place, direction, set, "G C_N", outside);
      else {
        add(place, direction, set, "G C_p", outside);
        const asComponents = outside.map((value) => asComponent * value);
        add(place, direction, set, "0.87 C_p", asComponents);
      }
      place += 1;
    }
  }
  return rows;
}

const isFreeRoof = (set: RoofLoad): boolean => freeRoofSets.some(({ id }) => id === set.id);

function equal(one: readonly number[], other: readonly number[]): boolean {
  for (let place = 0; place < one.length; place += 1) {
    if (one[place] !== other[place]) return false;
  }
  return true;
}

/** A run of stretches under one outside coefficient, for words and drawings. */
export interface HoopZone {
  readonly from: HoopBorder;
  readonly to: HoopBorder;
  readonly coefficient: number;
}

/** The outside coefficients of a row with equal neighbours as one; the strips stay by themselves. */
export function hoopZones(outside: readonly number[]): HoopZone[] {
  const zones: { from: HoopBorder; to: HoopBorder; coefficient: number }[] = [];
  for (const [stretch, coefficient] of outside.entries()) {
    const to = hoopBorders[stretch + 1] as HoopBorder;
    const last = zones[zones.length - 1];
    const onArch = stretch > 1 && stretch < hoopStretchCount - 1;
    if (last && onArch && last.coefficient === coefficient) last.to = to;
    else zones.push({ from: hoopBorders[stretch] as HoopBorder, to, coefficient });
  }
  return zones;
}
