import { type Chapter, cite, derived, formula, taken } from "@hoopstay/core";
import { loadLevel, momentAmplifier } from "@hoopstay/strength";
import type { LinkCombination } from "./combination.ts";

const frame = derived(
  "plane frame on its true arc, linear: one solution for weight and one for each stretch of pressure",
);

const weightArgument = ["w", "factored weight, per length of hoop", "force-per-length"] as const;
const windArgument = ["q", "factored K_d q_h", "pressure"] as const;

const factoredWeight = formula({
  id: "factored-line-weight",
  symbol: "w",
  name: "factored weight, per length of hoop",
  measure: "force-per-length",
  arguments: [
    ["gamma_D", "weight factor of the combination", "ratio"],
    ["g", "weight of the hoop and what hangs on it", "force-per-length"],
  ],
  expression: "gamma_D * g",
  citation: derived("weight hung on the hoops, shared evenly"),
  evaluate: (factor, weight) => factor * weight,
});

export const factoredPressure = formula({
  id: "factored-pressure",
  symbol: "q",
  name: "factored K_d q_h",
  measure: "pressure",
  arguments: [
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["q_d", "design K_d q_h", "pressure"],
  ],
  expression: "gamma_W * q_d",
  citation: derived("load combination"),
  evaluate: (factor, pressure) => factor * pressure,
});

const superposedForce = formula({
  id: "superposed-force",
  symbol: "N",
  name: "force out of weight and wind",
  measure: "force",
  arguments: [
    weightArgument,
    ["n_D", "force by a weight of one per length", "length"],
    windArgument,
    ["n_W", "force by a pressure of one", "area"],
  ],
  expression: "w * n_D + q * n_W",
  citation: frame,
  evaluate: (w, byWeight, q, byWind) => w * byWeight + q * byWind,
});

const superposedMoment = formula({
  id: "superposed-moment",
  symbol: "M",
  name: "moment out of weight and wind",
  measure: "moment",
  arguments: [
    weightArgument,
    ["m_D", "moment by a weight of one per length", "area"],
    windArgument,
    ["m_W", "moment by a pressure of one", "first-moment"],
  ],
  expression: "w * m_D + q * m_W",
  citation: frame,
  evaluate: (w, byWeight, q, byWind) => w * byWeight + q * byWind,
});

const bucklingShare = formula({
  id: "buckling-share",
  symbol: "u",
  name: "thrust over the elastic buckling load; from one on the member buckles and nothing is left",
  measure: "ratio",
  arguments: [
    ["alpha", "load level", "ratio"],
    ["P", "greatest thrust", "force"],
    ["N_e", "elastic buckling load", "force"],
  ],
  expression: "alpha * P / N_e",
  citation: cite("aisc-360-22", "appendix 8, A-8-7: the amplifier has no value there", "read"),
  evaluate: (level, thrust, euler) => (level * thrust) / euler,
});

/** Whether a member buckles under its thrust; if so that is all a sheet can tell of it. */
export function hasBuckled(
  sheet: Chapter,
  method: "ASD" | "LRFD",
  thrust: number,
  euler: number,
): boolean {
  if (Number.isFinite(momentAmplifier(method, thrust, euler))) return false;
  sheet.work(bucklingShare, [sheet.work(loadLevel[method], []), thrust, euler]);
  return true;
}

export const grownMoment = formula({
  id: "grown-moment",
  symbol: "M_r",
  name: "moment, second order",
  measure: "moment",
  arguments: [
    ["B", "growth by compression", "ratio"],
    ["M", "moment, first order", "moment"],
  ],
  expression: "B * M",
  citation: derived("the whole moment grows: feet that move count as sway"),
  evaluate: (growth, moment) => growth * moment,
});

export const forceOverStrength = formula({
  id: "force-over-strength",
  symbol: "u",
  name: "demand over resistance",
  measure: "ratio",
  arguments: [
    ["F", "demand", "force"],
    ["R", "resistance", "force"],
  ],
  expression: "F / R",
  citation: derived("demand over resistance"),
  evaluate: (demand, resistance) => demand / resistance,
});

export const momentOverStrength = formula({
  id: "moment-over-strength",
  symbol: "m",
  name: "moment over its strength",
  measure: "ratio",
  arguments: [
    ["M", "moment", "moment"],
    ["M_c", "strength", "moment"],
  ],
  expression: "M / M_c",
  citation: derived("demand over resistance"),
  evaluate: (moment, strength) => moment / strength,
});

export const lineForceOverStrength = formula({
  id: "line-force-over-strength",
  symbol: "u",
  name: "demand over resistance, per length of weld",
  measure: "ratio",
  arguments: [
    ["f", "demand", "force-per-length"],
    ["r", "resistance", "force-per-length"],
  ],
  expression: "f / r",
  citation: derived("demand over resistance"),
  evaluate: (demand, resistance) => demand / resistance,
});

/** Puts weight and wind together on a sheet, force by force. */
export class Superposed {
  private readonly w: number;
  private readonly q: number;

  /**
   * @param weight of the hoop and what hangs on it, N/m, unfactored
   * @param pressure K_d q_h, Pa
   */
  constructor(
    private readonly sheet: Chapter,
    weight: number,
    pressure: number,
    { dead, wind, words }: LinkCombination,
  ) {
    this.w = sheet.work(factoredWeight, [dead, weight], { note: words });
    this.q = sheet.work(factoredPressure, [wind, pressure]);
  }

  force(symbol: string, note: string, byWeight: number, byWind: number): number {
    return this.sheet.work(superposedForce, [this.w, byWeight, this.q, byWind], { symbol, note });
  }

  moment(symbol: string, note: string, byWeight: number, byWind: number): number {
    return this.sheet.work(superposedMoment, [this.w, byWeight, this.q, byWind], { symbol, note });
  }
}

/** A number found by a solver, that no formula gives: it is printed with what found it. */
export const found = (
  symbol: string,
  name: string,
  value: number,
  measure: "force" | "moment" | "ratio" | "pressure" | "force-per-length",
  by: string,
) => taken(by, `found-${symbol}`, symbol, name, value, measure, derived(by));
