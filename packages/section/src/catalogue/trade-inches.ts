const inch = 0.0254;

/**
 * Metres of a trade dimension in inches: `3`, `1.660`, `1/8`, `2-1/2`.
 *
 * @param text dimension as the designation writes it
 * @returns m
 * @example tradeInches("2-1/2") // 0.0635
 */
export function tradeInches(text: string): number {
  const [whole = "", rest] = text.split("-");
  const parts = rest === undefined ? [whole] : [whole, rest];
  return parts.reduce((total, part) => total + ratio(part), 0) * inch;
}

function ratio(text: string): number {
  const [above = "", below = "1"] = text.split("/");
  return Number(above) / Number(below);
}
