import { figures, type System, unitOf } from "@hoopstay/core";

/** Forces of one table: their unit, and their figures in it. */
export interface ForceColumn {
  readonly symbol: string;
  readonly cell: (value: number) => string;
}

export function forceColumn(system: System, values: readonly number[]): ForceColumn {
  const unit = unitOf("force", system, Math.max(0, ...values.map(Math.abs)));
  return { symbol: unit.symbol, cell: (value) => figures(value, unit) };
}

/** Demand over what is allowed. */
export const ratioText = (ratio: number): string =>
  Number.isFinite(ratio) ? (ratio >= 100 ? ">100" : ratio.toFixed(2)) : "no hold";
