import { type Citation, cite, judged } from "@hoopstay/core";

/** Ground under a steel rail, in an owner's words. */
export type GroundKind =
  | "unknown"
  | "grass"
  | "clay"
  | "silt"
  | "silty sand"
  | "sand"
  | "gravel"
  | "mud"
  | "ice";

/** Steel on bare soil, NAVFAC DM 7.02 table 1 [read]; dry ground only. */
export const bareSoilFriction: Readonly<Partial<Record<GroundKind, number>>> = {
  silt: 0.2,
  "silty sand": 0.25,
  sand: 0.3,
  gravel: 0.4,
};

const slippery = 0.15;

/**
 * Friction that may be counted on to hold a rail against sliding, with its citation: 0 on ice and
 * mud; on named bare dry soil the value of DM 7.02; 0.15 on wet, grass, clay or unknown ground.
 * Adhesion is never added. For dragging other values hold.
 */
export function holdingFriction(
  ground: GroundKind,
  wet: boolean,
): { readonly friction: number; readonly citation: Citation } {
  if (ground === "mud" || ground === "ice") {
    return { friction: 0, citation: judged("on mud or ice no friction is counted") };
  }
  const dry = bareSoilFriction[ground];
  if (dry !== undefined && !wet) {
    return {
      friction: dry,
      citation: cite("navfac-dm-7.02", `steel on ${ground}`, "read"),
    };
  }
  return {
    friction: slippery,
    citation: judged("ground unknown, wet, grass or clay: 0.15; adhesion never added"),
  };
}
