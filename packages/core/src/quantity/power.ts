/**
 * Base to an exponent, with the same bits under every engine: products, roots, exponentials and
 * logarithms are rounded alike by all that were tried, `**` is not (Node 24 against 20 and 22).
 */
export function power(base: number, exponent: number): number {
  if (!Number.isInteger(exponent)) return Math.exp(exponent * Math.log(base));
  let product = 1;
  for (let times = Math.abs(exponent); times > 0; times -= 1) product *= base;
  return exponent < 0 ? 1 / product : product;
}
