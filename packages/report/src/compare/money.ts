import type { System } from "@hoopstay/core";
import { typed } from "../html/escape.ts";

/** A sum of money in whole units, with the currency as the file writes it. */
export const money = (sum: number, currency: string, system: System): string => {
  const between = system === "us" ? "," : "\u202f";
  return `${sum.toFixed(0).replace(/\d(?=(?:\d{3})+$)/g, `$&${between}`)}\u00a0${typed(currency)}`;
};

/** A part of a whole in whole per cent. */
export const share = (part: number): string => `${(100 * part).toFixed(0)} %`;
