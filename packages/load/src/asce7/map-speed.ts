import { cite, formula, judged } from "@hoopstay/core";
import { directionality } from "./constants.ts";

/** What kind of speed is given. A bare number is refused at the door. */
export type SpeedBasis = "design" | "service" | "gust";

export const fromService = formula({
  id: "speed-from-service",
  symbol: "V",
  name: "strength-level speed from a service-level one",
  measure: "speed",
  arguments: [["V_s", "service-level wind speed", "speed"]],
  expression: "V_s / sqrt(0.6)",
  citation: cite("ibc-2012", "1609.3.1, eq. 16-33", "second-hand"),
  evaluate: (speed) => speed / Math.sqrt(0.6),
});

export const fromGust = formula({
  id: "speed-from-gust",
  symbol: "V",
  name: "map speed at which a real gust is checked",
  measure: "speed",
  arguments: [
    ["V_g", "real 3-second gust at 10 m in open country", "speed"],
    ["K_d", "directionality factor, which a real gust does not enjoy", "ratio"],
  ],
  expression: "V_g / sqrt(0.6 * K_d)",
  citation: judged("a gust comes from any side: K_d = 1 for it; safe side"),
  evaluate: (gust, kd) => gust / Math.sqrt(0.6 * kd),
});

export const workingGust = formula({
  id: "working-gust",
  symbol: "V_w",
  name: "real gust at which allowable values are reached",
  measure: "speed",
  arguments: [
    ["V_c", "code speed of the ASD combination", "speed"],
    ["K_d", "directionality factor", "ratio"],
  ],
  expression: "V_c * sqrt(0.6 * K_d)",
  citation: judged("0.6 is the ASD wind factor, K_d belongs to map speeds only"),
  evaluate: (code, kd) => code * Math.sqrt(0.6 * kd),
});

export const codeSpeed = formula({
  id: "code-speed",
  symbol: "V_c",
  name: "largest map speed that meets the combination",
  measure: "speed",
  arguments: [
    ["q_c", "K_d q_h at which the check is just met", "pressure"],
    ["q_1", "K_d q_h at 1 m/s", "pressure"],
  ],
  expression: "sqrt(q_c / q_1)",
  citation: cite("asce-7-16", "eq. 26.10-1 solved for V", "derived"),
  evaluate: (limit, perSpeedSquared) => Math.sqrt(limit / perSpeedSquared),
});

/** The map speed (m/s) at which a given speed of a given basis is checked. */
export function mapSpeed(speed: number, basis: SpeedBasis): number {
  if (basis === "design") return speed;
  if (basis === "service") return fromService.evaluate(speed);
  return fromGust.evaluate(speed, directionality.value);
}
