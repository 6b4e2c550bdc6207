import {
  type ComponentCoefficients,
  type ComponentTable,
  type Covering,
  componentCoefficient,
  componentPressure,
  componentRatioOf,
  componentTable,
} from "@hoopstay/load";
import type { Worksheet } from "@hoopstay/strength";
import type { Evaluation, LoadSet } from "../../review/evaluate.ts";
import { caseOneOf, windDirections } from "../case-one.ts";
import type { RowCase } from "../link.ts";
import { found } from "../superposed.ts";

/** Load sets in which a component feels the same: one covering, one inside pressure. */
export interface ComponentGroup {
  readonly covering: Covering;
  readonly table: ComponentTable;
  readonly insideCoefficients: readonly number[];
  readonly sets: readonly LoadSet[];
  /** K_z of components over K_z. */
  readonly ratio: number;
}

/** @param counts whether a load set has the component at all */
export function componentGroups(
  { shell, site, body, states }: Evaluation,
  counts: (set: LoadSet) => boolean,
): ComponentGroup[] {
  const ratio = componentRatioOf(site.place, shell.h);
  const groups = new Map<string, ComponentGroup & { readonly sets: LoadSet[] }>();
  for (const set of new Set(states.map((state) => state.set))) {
    if (!counts(set)) continue;
    const { covering, insideCoefficients } = set;
    const key = `${covering} ${Math.max(...insideCoefficients)}`;
    const known = groups.get(key);
    if (known) known.sets.push(set);
    else {
      const table = componentTable(shell, covering, body.reading);
      groups.set(key, { covering, table, insideCoefficients, ratio, sets: [set] });
    }
  }
  return [...groups.values()];
}

export type Way = keyof ComponentCoefficients;

/** Pressure on one component, one way, in the load sets of a group. */
export interface NetComponent {
  readonly group: ComponentGroup;
  readonly way: Way;
  /** GC_p, + toward the surface. */
  readonly outside: number;
  /** The GC_pi that goes with it. */
  readonly inside: number;
  readonly words: string;
}

export const netComponent = (
  group: ComponentGroup,
  coefficients: ComponentCoefficients,
  way: Way,
  words: string,
): NetComponent => ({
  group,
  way,
  outside: coefficients[way],
  inside: (way === "outward" ? Math.max : Math.min)(...group.insideCoefficients),
  words,
});

/** Net coefficient toward the surface, per unit of K_d q_h. */
export const coefficientOf = ({ group, outside, inside }: NetComponent): number =>
  componentCoefficient.evaluate(group.ratio, outside, inside);

/** Of the two ways, the one that presses harder. */
export function harder(one: NetComponent, other: NetComponent): NetComponent {
  return Math.abs(coefficientOf(one)) >= Math.abs(coefficientOf(other)) ? one : other;
}

const by = "worst of its figure's rows and of either wind direction, by place and effective area";

/** Net pressure toward the surface, Pa, at a factored K_d q_h, on a sheet. */
export function workPressure(sheet: Worksheet, q: number, of: NetComponent): number {
  const { group, outside, inside, words } = of;
  const coefficient = sheet.work(found("GC_p", words, outside, "ratio", by), []);
  const net = sheet.work(componentCoefficient, [group.ratio, coefficient, inside]);
  return sheet.work(componentPressure, [q, net]);
}

/**
 * Components feel their pressure whatever way the wind blows: a case for each direction, named by
 * the first load case 1 with the inside pressure that goes with it.
 */
export const componentCases = ({ group, inside, words }: NetComponent): RowCase[] =>
  windDirections.map((direction) => ({
    direction,
    form: `component pressure, ${words}`,
    sets: new Map(group.sets.map((set) => [set, caseOneOf(set, direction, inside)])),
  }));
