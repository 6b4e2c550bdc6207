import {
  acrossHoopRows,
  alongHoopRows,
  type HoopPressureRow,
  hoopDragRows,
  hoopTributaries,
  type Shell,
} from "@hoopstay/load";
import type { Evaluation, LoadSet } from "../review/evaluate.ts";
import { stretchCount } from "./hoop/hoop-frame.ts";
import { legOf } from "./hoop/hoop-outline.ts";

export type WindDirection = "+x" | "-x" | "+y" | "-y";

/** A pressure pattern on the hoops, with the load sets and cases in which it acts. */
export interface ChainCase {
  readonly direction: WindDirection;
  /** Form of the coefficients, for words: G C_p, 0.87 C_p. */
  readonly form: string;
  readonly filmOn: boolean;
  /** Multiples of the unit stretches, outside less inside, by hoop: one for all, or one each. */
  readonly stretches: readonly (readonly number[])[];
  /** Push on every metre of bare tube, m (times K_d q_h). */
  readonly push: number;
  /** Case index in every load set it stands in. */
  readonly sets: Map<LoadSet, number>;
}

const keyOf = (direction: string, form: string, filmOn: boolean, numbers: readonly number[]) =>
  `${direction} ${form} ${filmOn} ${numbers.map((value) => value.toPrecision(12)).join(" ")}`;

/** Collects equal patterns of different load sets as one. */
class Cases {
  readonly found = new Map<string, ChainCase>();

  add(made: Omit<ChainCase, "sets">, set: LoadSet, caseIndex: number): void {
    const { direction, form, filmOn, stretches, push } = made;
    const key = keyOf(direction, form, filmOn, [...stretches.flat(), push]);
    const known = this.found.get(key);
    if (!known) this.found.set(key, { ...made, sets: new Map([[set, caseIndex]]) });
    else if (!known.sets.has(set)) known.sets.set(set, caseIndex);
  }
}

/** Coefficients by stretch; a hoop without legs has no tube in the first stretch and the last. */
const net = ({ outside, inside }: HoopPressureRow, legged: boolean): number[] =>
  outside.map((coefficient, stretch) =>
    legged || (stretch > 0 && stretch < stretchCount - 1) ? coefficient - inside : 0,
  );

/** Rows of wind along the ridge, hoop by hoop: the same sources in every hoop's list. */
function alongCases(
  shell: Shell,
  set: LoadSet,
  places: readonly number[],
  legged: boolean,
  cases: Cases,
): void {
  const lists = hoopTributaries(shell, places).map((tributary) =>
    alongHoopRows(shell, set, tributary),
  );
  const bySource = new Map<
    string,
    { row: HoopPressureRow; source: HoopPressureRow["sources"][number] }[]
  >();
  for (const rows of lists) {
    for (const row of rows) {
      for (const source of row.sources) {
        const key = `${source.caseIndex} ${source.form}`;
        const list = bySource.get(key) ?? [];
        if (list.length === 0) bySource.set(key, list);
        list.push({ row, source });
      }
    }
  }
  for (const list of bySource.values()) {
    const { source } = list[0] as (typeof list)[number];
    const stretches = list.map(({ row }) => net(row, legged));
    const { direction, form, caseIndex } = source;
    cases.add({ direction, form, filmOn: true, stretches, push: 0 }, set, caseIndex);
  }
}

/** Every pattern of wind on the hoops, load case 1, in every state asked for. */
export function chainCases(
  { house, shell, states }: Pick<Evaluation, "house" | "shell" | "states">,
  places: readonly number[],
): ChainCase[] {
  const legged = legOf(house) > 0;
  const cases = new Cases();
  for (const set of new Set(states.map((state) => state.set))) {
    if (set.covering === "bare") {
      for (const { caseIndex, direction, drag } of hoopDragRows(shell, set)) {
        const none = [new Array<number>(stretchCount).fill(0)];
        // Along the ridge the tubes are pushed out of the hoop's plane: see the ridge line.
        const push = direction === "+x" || direction === "-x" ? drag : 0;
        const made = { direction, form: "C_f", filmOn: false, stretches: none, push };
        cases.add(made, set, caseIndex);
      }
      continue;
    }
    for (const row of acrossHoopRows(shell, set)) {
      for (const { direction, form, caseIndex } of row.sources) {
        cases.add(
          { direction, form, filmOn: true, stretches: [net(row, legged)], push: 0 },
          set,
          caseIndex,
        );
      }
    }
    alongCases(shell, set, places, legged, cases);
  }
  return [...cases.found.values()];
}

/** Rails and anchors take main-frame pressures; hoops, stubs and welds the others as well. */
export const mainForm = ({ form }: ChainCase): boolean => form !== "0.87 C_p";
