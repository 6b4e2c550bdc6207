import { constant, judged } from "@hoopstay/core";
import type { LateralAnchor } from "@hoopstay/frame";
import type { House } from "../../model/house-model.ts";
import type { WindDirection } from "../chain-case.ts";

/** What holds the rails sideways: anchors whose tethers pull against the wind, or the ground evenly. */
export interface SideHold {
  /** The same for the same anchors. */
  readonly id: string;
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
  return holdBy(lateral);
}

/** At one place only, anchors would let the house turn about them. */
function holdBy(anchors: readonly LateralAnchor[]): SideHold {
  const places = anchors.map(({ y }) => y.toFixed(6));
  if (new Set(places).size < 2) return evenly;
  return { id: anchors.map(({ rail }, at) => `${rail} ${places[at]}`).join(", "), anchors };
}

/**
 * A tether cannot push: what is left of a hold without the anchors that do.
 *
 * @param forces of its anchors on the rails, N
 * @returns the same hold where none pushes; evenly where too few are left
 */
export function withoutPushing(
  hold: SideHold,
  forces: Float64Array,
  direction: WindDirection,
): SideHold {
  if (!hold.anchors) return hold;
  const against = direction === "+x" ? -1 : 1;
  const pulling = hold.anchors.filter((_, at) => (forces[at] as number) * against >= 0);
  return pulling.length === hold.anchors.length ? hold : holdBy(pulling);
}
