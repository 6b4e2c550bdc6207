import { constant, judged } from "@hoopstay/core";
import type { LateralAnchor } from "@hoopstay/frame";
import type { House } from "../../model/house-model.ts";
import type { WindDirection } from "../chain-case.ts";

/** What holds the rails sideways: anchors whose tethers pull against the wind, or the ground evenly. */
export interface SideHold {
  readonly id: "evenly" | "+x" | "-x";
  /** Null: the net side force lies evenly along both rails. */
  readonly anchors: readonly LateralAnchor[] | null;
}

/** Movement along its tether at which an anchor reaches its allowable pull. */
const anchorGive = constant(
  "anchor-give",
  "u_a",
  "movement of an anchor at its allowable pull",
  0.01,
  "length",
  judged("10 mm, as for upright pulls; only shares the side force between anchors"),
);

const evenly: SideHold = { id: "evenly", anchors: null };

/** @param direction of the wind; null for weight, which pushes to no side */
export function sideHold({ anchors, rail }: House, direction: WindDirection | null): SideHold {
  if (direction !== "+x" && direction !== "-x") return evenly;
  const against = direction === "+x" ? -1 : 1;
  const lateral = anchors
    .filter(({ side, toward, pull }) => side !== "middle" && toward[0] * against > 1e-9 && pull > 0)
    .map(
      ({ side, y, pull, toward }): LateralAnchor => ({
        rail: side === "left" ? "left" : "right",
        y: Math.min(rail.front + rail.back, Math.max(0, rail.front - y)),
        stiffness: (pull / anchorGive.value) * toward[0] ** 2,
      }),
    );
  const places = new Set(lateral.map(({ y }) => y.toFixed(6)));
  return places.size >= 2 ? { id: direction, anchors: lateral } : evenly;
}
