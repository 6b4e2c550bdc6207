import { type CutList, measured, type Words } from "@hoopstay/core";
import type { TubeGroup } from "./house-pieces.ts";
import { mostPlacedPieces } from "./joint-places.ts";
import { fewestPieces } from "./pieces-of-line.ts";

/**
 * What is to be said where the sticks told are much shorter than a hoop. Judged: one of more pieces
 * than joints are placed for is hardly what somebody means to build.
 */
export function shortStickWords({ members }: TubeGroup, { stock, tube }: CutList): Words[] {
  return members.flatMap(({ what, length, bends }): Words[] => {
    const pieces = fewestPieces(length, stock);
    if (bends !== "hoop" || pieces <= mostPlacedPieces) return [];
    return [
      [
        `Each of the ${what} (`,
        measured(length, "length"),
        `) would be joined of ${pieces} pieces, for a stick of ${tube} is only `,
        measured(stock, "length"),
        ": hardly what is meant; no such joint is rated. Enter the sticks you can buy under prices.stock.",
      ],
    ];
  });
}
