import type { StormLadder, System } from "@hoopstay/core";
import { stormMarkup } from "../sheet/storm.ts";
import { type Stamp, single } from "./single.ts";

/** The storm ladder as a self-contained page of its own. */
export function renderLadder(
  ladder: StormLadder,
  { system, stamp }: { readonly system: System; readonly stamp: Stamp },
): string {
  return single("Storm ladder", ladder, stamp, stormMarkup(ladder, system), "ladder");
}
