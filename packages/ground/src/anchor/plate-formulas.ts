import { cite, derived, formula } from "@hoopstay/core";

export const ringArea = formula({
  id: "helix-area",
  symbol: "A",
  name: "area of a helix without its shaft",
  measure: "area",
  arguments: [
    ["B", "plate diameter", "length"],
    ["d", "shaft diameter", "length"],
  ],
  expression: "3.141592653589793 / 4 * (B^2 - d^2)",
  citation: derived("ring; the embedment ratio is taken with the whole B"),
  range: "d below B",
  evaluate: (B, d) => (Math.PI / 4) * (B * B - d * d),
});

export const equalSquareSide = formula({
  id: "equal-area-square",
  symbol: "B",
  name: "side of the square of equal area",
  measure: "length",
  arguments: [["A", "plate area", "area"]],
  expression: "sqrt(A)",
  citation: derived("a longer plate of that area breaks out more soil: safe side"),
  evaluate: (A) => Math.sqrt(A),
});

export const embedmentRatio = formula({
  id: "embedment-ratio",
  symbol: "lambda",
  name: "depth over breadth, as far as the breakout factor grows",
  measure: "ratio",
  arguments: [
    ["H", "depth of the plate's centre", "length"],
    ["B", "plate breadth", "length"],
    ["lambda_cr", "ratio beyond which the factor stays", "ratio"],
  ],
  expression: "min(H / B, lambda_cr)",
  citation: cite("das-earth-anchors", "shallow and deep anchors, critical embedment", "memory"),
  evaluate: (H, B, critical) => Math.min(H / B, critical),
});

export const sandUplift = formula({
  id: "plate-uplift-sand",
  symbol: "Q",
  name: "uplift of a plate in sand, ultimate",
  measure: "force",
  arguments: [
    ["F_q", "breakout factor", "ratio"],
    ["gamma", "effective weight of the soil, per metre of depth", "unit-weight"],
    ["A", "plate area", "area"],
    ["H", "depth of the plate's centre", "length"],
  ],
  expression: "F_q * gamma * A * H",
  citation: cite("das-earth-anchors", "uplift of a plate in sand, net", "memory"),
  evaluate: (factor, weight, area, depth) => factor * weight * area * depth,
});

export const clayFactor = formula({
  id: "clay-breakout-factor",
  symbol: "F_c",
  name: "breakout factor in clay",
  measure: "ratio",
  arguments: [
    ["H", "depth of the plate's centre", "length"],
    ["B", "plate breadth", "length"],
  ],
  expression: "min(1.2 * H / B, 9)",
  citation: cite("meyerhof-1973", "square or circular plate: 1.2 H/B, at most 9", "memory"),
  evaluate: (H, B) => Math.min((1.2 * H) / B, 9),
});

export const clayUplift = formula({
  id: "plate-uplift-clay",
  symbol: "Q",
  name: "uplift of a plate in clay, ultimate",
  measure: "force",
  arguments: [
    ["A", "plate area", "area"],
    ["c_u", "undrained strength", "pressure"],
    ["F_c", "breakout factor in clay", "ratio"],
    ["gamma", "total weight of the soil, per metre of depth", "unit-weight"],
    ["H", "depth of the plate's centre", "length"],
  ],
  expression: "A * (c_u * F_c + gamma * H)",
  citation: cite("das-earth-anchors", "plate in clay, undrained; suction ignored", "memory"),
  evaluate: (area, strength, factor, weight, depth) => area * (strength * factor + weight * depth),
});
