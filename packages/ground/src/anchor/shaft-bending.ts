import { type Chapter, cite, constant, derived, formula, judged } from "@hoopstay/core";
import type { Shaft } from "./anchor.ts";

const ksi = 6_894_757.293168361;

const assumedYield = constant(
  "assumed-yield",
  "F_y",
  "yield stress of a shaft of unknown steel",
  36 * ksi,
  "pressure",
  judged("mild steel where no grade is known; stakes are seldom softer"),
);

const plasticMoment = formula({
  id: "shaft-plastic-moment",
  symbol: "M_p",
  name: "plastic moment of the shaft",
  measure: "moment",
  arguments: [
    ["F_y", "yield stress", "pressure"],
    ["Z", "plastic section modulus", "section-modulus"],
  ],
  expression: "F_y * Z",
  citation: cite("aisc-360-22", "F11.1", "memory"),
  evaluate: (stress, modulus) => stress * modulus,
});

const allowableMoment = formula({
  id: "shaft-allowable-moment",
  symbol: "M_a",
  name: "allowable moment of the shaft",
  measure: "moment",
  arguments: [["M_p", "plastic moment", "moment"]],
  expression: "M_p / 1.67",
  citation: cite("aisc-360-22", "F1, Omega_b 1.67", "memory"),
  evaluate: (moment) => moment / 1.67,
});

/** The part of a stabiliser's factored force that bends the shaft no further than allowed. */
export const plateForceInBending = formula({
  id: "stabiliser-in-bending",
  symbol: "R_m",
  name: "force of the stabiliser as far as the shaft can take it",
  measure: "force",
  arguments: [
    ["R", "force of the stabiliser", "force"],
    ["FS", "factor on the ground", "ratio"],
    ["M", "greatest moment allowed", "moment"],
    ["e", "height of the pull above ground", "length"],
    ["z_s", "depth at which the stabiliser acts", "length"],
  ],
  expression: "min(R / FS, M / (e + z_s))",
  citation: derived("a pull held by the plate alone bends the shaft by no more than T (e + z_s)"),
  evaluate: (force, factor, moment, e, z) => Math.min(force / factor, moment / (e + z)),
});

export const momentLeft = formula({
  id: "moment-left",
  symbol: "M_r",
  name: "moment left for the ground's reaction on the shaft",
  measure: "moment",
  arguments: [
    ["M", "greatest moment allowed", "moment"],
    ["R_m", "force of the stabiliser", "force"],
    ["e", "height of the pull above ground", "length"],
    ["z_s", "depth at which the stabiliser acts", "length"],
  ],
  expression: "max(0, M - R_m * (e + z_s))",
  citation: derived("the plate's share of the moment taken off"),
  evaluate: (moment, force, e, z) => Math.max(0, moment - force * (e + z)),
});

/** Plastic moment of a shaft and M_p/1.67, N·m. */
export function shaftMoments(
  { yieldStress, plasticModulus }: Shaft,
  chapter: Chapter,
): { readonly plastic: number; readonly allowable: number } {
  const stress = yieldStress ?? chapter.work(assumedYield, []);
  const plastic = chapter.work(plasticMoment, [stress, plasticModulus]);
  return { plastic, allowable: chapter.work(allowableMoment, [plastic]) };
}
