import { judged } from "@hoopstay/core";

/** Within this of a shaft, rad, a pull counts as along it. */
export const inLine = {
  angle: Math.PI / 180,
  citation: judged("1 degree: the part across is under 2 % of the pull"),
} as const;

/**
 * A stake has no credit along itself, but the ground it leans on grips it: a pull off square by no
 * more than the friction angle of the holding friction 0.15 is carried sideways.
 */
export const nearSquare = {
  angle: Math.atan(0.15),
  citation: judged("the part along the stake is at most 0.15 of the part across, held by friction"),
} as const;

/** A tether to a picket set runs along the ground, up to the 15 degrees at which pickets lean. */
export const alongGround = {
  angle: (15 * Math.PI) / 180,
  citation: judged("the manuals draw the line flat to pickets that lean 15 degrees"),
} as const;

/** Undrained strength, Pa, below which ground is soft: no slanted pull without a stabiliser. */
export const softBelow = 25_000;
