import type { Words } from "@hoopstay/core";
import { type Steel, steelOf } from "@hoopstay/strength";
import type { SteelTube } from "../model/steel-tube.ts";

/** The strength of a tube's steel, by its standard, grade or mill certificate. */
export function steelOfTube({ tube, steel }: SteelTube): Steel {
  const form = tube.kind === "round" ? "round" : tube.kind === "rectangular" ? "shaped" : "solid";
  return steelOf({ ...steel, form });
}

/** A steel without a strength standard behind it, told to its owner. */
export const steelFindings = (part: string, { listed, words }: Steel): Words[] =>
  listed ? [] : [[`${part}: outside listed materials: ${words}.`]];
