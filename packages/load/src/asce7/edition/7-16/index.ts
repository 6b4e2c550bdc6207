import { cite, formula, power } from "@hoopstay/core";
import type { Edition } from "../edition.ts";

/** ASCE 7-16: K_d stands in the velocity pressure. */
export const asce716: Edition = {
  id: "7-16",
  title: "ASCE/SEI 7-16",
  source: "asce-7-16",
  exposures: {
    B: { alpha: 7.0, gradientFeet: 1200 },
    C: { alpha: 9.5, gradientFeet: 900 },
    D: { alpha: 11.5, gradientFeet: 700 },
  },
  exposureCitation: cite("bnbc-2020", "tables 6.2.10, 6.2.11 (ASCE 7-16 table 26.11-1)", "read"),
  exposureCoefficient: formula({
    id: "exposure-coefficient-7-16",
    symbol: "K_z",
    name: "velocity pressure exposure coefficient",
    measure: "ratio",
    arguments: [
      ["z", "height, not below 15 ft", "length"],
      ["z_g", "gradient height", "length"],
      ["alpha", "power of the wind profile", "ratio"],
    ],
    expression: "2.01 * (z / z_g)^(2 / alpha)",
    citation: cite("asce-7-16", "table 26.10-1, note 1", "second-hand"),
    range: "15 ft to the gradient height",
    evaluate: (z, zg, alpha) => 2.01 * power(z / zg, 2 / alpha),
  }),
  velocityPressure: formula({
    id: "velocity-pressure-7-16",
    symbol: "q_h",
    name: "velocity pressure at mean roof height",
    measure: "pressure",
    arguments: [
      ["K_z", "exposure coefficient", "ratio"],
      ["K_zt", "hill factor", "ratio"],
      ["K_d", "directionality factor", "ratio"],
      ["K_e", "ground elevation factor", "ratio"],
      ["V", "strength-level wind speed", "speed"],
    ],
    expression: "0.613 * K_z * K_zt * K_d * K_e * V^2",
    citation: cite("asce-7-16", "eq. 26.10-1 (SI)", "second-hand"),
    evaluate: (kz, kzt, kd, ke, v) => 0.613 * kz * kzt * kd * ke * v * v,
  }),
  pressure: formula({
    id: "pressure-7-16",
    symbol: "p",
    name: "pressure toward the surface",
    measure: "pressure",
    arguments: [
      ["q_h", "velocity pressure, K_d in it", "pressure"],
      ["K_d", "directionality factor (already in q_h)", "ratio"],
      ["GC_p", "gust factor times outside coefficient", "ratio"],
      ["GC_pi", "inside coefficient", "ratio"],
    ],
    expression: "q_h * (GC_p - GC_pi)",
    citation: cite("asce-7-16", "eq. 27.3-1", "second-hand"),
    evaluate: (q, _kd, outside, inside) => q * (outside - inside),
  }),
};
