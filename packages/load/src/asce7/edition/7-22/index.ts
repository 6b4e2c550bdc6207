import { cite, formula, power } from "@hoopstay/core";
import type { Edition } from "../edition.ts";

/** ASCE 7-22: K_d has left the velocity pressure and multiplies every pressure. */
export const asce722: Edition = {
  id: "7-22",
  title: "ASCE/SEI 7-22",
  source: "asce-7-22",
  exposures: {
    B: { alpha: 7.5, gradientFeet: 3280 },
    C: { alpha: 9.8, gradientFeet: 2460 },
    D: { alpha: 11.5, gradientFeet: 1935 },
  },
  exposureCitation: cite("asce-7-22", "table 26.11-1", "memory"),
  exposureCoefficient: formula({
    id: "exposure-coefficient-7-22",
    symbol: "K_z",
    name: "velocity pressure exposure coefficient",
    measure: "ratio",
    arguments: [
      ["z", "height, not below 15 ft", "length"],
      ["z_g", "gradient height", "length"],
      ["alpha", "power of the wind profile", "ratio"],
    ],
    expression: "2.41 * (z / z_g)^(2 / alpha)",
    citation: cite("asce-7-22", "table 26.10-1, note 1; reproduces the printed table", "memory"),
    range: "15 ft to the gradient height",
    evaluate: (z, zg, alpha) => 2.41 * power(z / zg, 2 / alpha),
  }),
  velocityPressure: formula({
    id: "velocity-pressure-7-22",
    symbol: "q_h",
    name: "velocity pressure at mean roof height, without K_d",
    measure: "pressure",
    arguments: [
      ["K_z", "exposure coefficient", "ratio"],
      ["K_zt", "hill factor", "ratio"],
      ["K_d", "directionality factor (not in this pressure)", "ratio"],
      ["K_e", "ground elevation factor", "ratio"],
      ["V", "strength-level wind speed", "speed"],
    ],
    expression: "0.613 * K_z * K_zt * K_e * V^2",
    citation: cite("asce-7-22", "eq. 26.10-1", "second-hand"),
    evaluate: (kz, kzt, _kd, ke, v) => 0.613 * kz * kzt * ke * v * v,
  }),
  pressure: formula({
    id: "pressure-7-22",
    symbol: "p",
    name: "pressure toward the surface",
    measure: "pressure",
    arguments: [
      ["q_h", "velocity pressure without K_d", "pressure"],
      ["K_d", "directionality factor", "ratio"],
      ["GC_p", "gust factor times outside coefficient", "ratio"],
      ["GC_pi", "inside coefficient", "ratio"],
    ],
    expression: "K_d * q_h * (GC_p - GC_pi)",
    citation: cite("asce-7-22", "eq. 27.3-1", "second-hand"),
    evaluate: (q, kd, outside, inside) => kd * q * (outside - inside),
  }),
};
