import { type Citation, cite, type Formula, formula } from "@hoopstay/core";

const steel = [
  ["E", "modulus of elasticity", "pressure"],
  ["F_y", "yield strength", "pressure"],
] as const;

type Limit = Formula<readonly [number, number]>;

const rootLimit = (
  id: string,
  symbol: string,
  name: string,
  coefficient: number,
  citation: Citation,
): Limit =>
  formula({
    id,
    symbol,
    name,
    measure: "ratio",
    arguments: steel,
    expression: `${coefficient} * sqrt(E / F_y)`,
    citation,
    evaluate: (E, fy) => coefficient * Math.sqrt(E / fy),
  });

const straightLimit = (
  id: string,
  symbol: string,
  name: string,
  coefficient: number,
  citation: Citation,
): Limit =>
  formula({
    id,
    symbol,
    name,
    measure: "ratio",
    arguments: steel,
    expression: `${coefficient} * E / F_y`,
    citation,
    evaluate: (E, fy) => (coefficient * E) / fy,
  });

const read = (place: string) => cite("aisc-360-22", place, "read");

/**
 * Limits of flat over wall, and of diameter over wall, between compact, noncompact and slender.
 * The copy read shows a root over the round limits of flexure; without it they agree with F8.
 *
 * @example slendernessLimits.flangeCompact.evaluate(29000, 50) // 26.97
 */
export const slendernessLimits = {
  wallInCompression: rootLimit(
    "wall-in-compression",
    "lambda_r",
    "flat over wall up to which a wall in compression is whole",
    1.4,
    read("table B4.1a, walls of rectangular HSS"),
  ),
  roundInCompression: straightLimit(
    "round-in-compression",
    "lambda_r",
    "diameter over wall up to which a round tube in compression is whole",
    0.11,
    read("E7.2 and table B4.1a, round HSS"),
  ),
  flangeCompact: rootLimit(
    "flange-compact",
    "lambda_p",
    "flat over wall of a compact flange",
    1.12,
    read("table B4.1b, flanges of rectangular HSS"),
  ),
  flangeNoncompact: rootLimit(
    "flange-noncompact",
    "lambda_r",
    "flat over wall of a noncompact flange",
    1.4,
    read("table B4.1b, flanges of rectangular HSS"),
  ),
  webCompact: rootLimit(
    "web-compact",
    "lambda_p",
    "flat over wall of a compact web",
    2.42,
    read("table B4.1b, webs of rectangular HSS"),
  ),
  webNoncompact: rootLimit(
    "web-noncompact",
    "lambda_r",
    "flat over wall of a noncompact web",
    5.7,
    read("table B4.1b, webs of rectangular HSS"),
  ),
  roundCompact: straightLimit(
    "round-compact",
    "lambda_p",
    "diameter over wall of a compact round tube",
    0.07,
    cite("aisc-360-22", "table B4.1b, round HSS; form without root", "memory"),
  ),
  roundNoncompact: straightLimit(
    "round-noncompact",
    "lambda_r",
    "diameter over wall of a noncompact round tube",
    0.31,
    cite("aisc-360-22", "table B4.1b, round HSS; form without root", "memory"),
  ),
  roundCovered: straightLimit(
    "round-covered",
    "lambda_max",
    "diameter over wall up to which round tube is covered",
    0.45,
    read("F8 and E7.2"),
  ),
  inelasticBuckling: rootLimit(
    "inelastic-buckling-limit",
    "lambda_e",
    "slenderness up to which a member buckles with yielding",
    4.71,
    read("E3(a)"),
  ),
} as const satisfies Record<string, Limit>;
