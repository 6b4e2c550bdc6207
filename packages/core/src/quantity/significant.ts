/**
 * A number to some significant figures, the same text in every locale. Trailing noughts are kept
 * where rounding made them (5.401 is 5.40) and dropped where nothing was rounded (18 is 18).
 * @param value finite, in any unit
 * @param digits 1 to 12
 * @returns plain decimals; below 1e-6 and from 1e15 on with an exponent
 * @throws RangeError if the value is not finite, or `digits` is no whole number from 1 to 12
 * @example significant(28.1857, 3) // "28.2"
 */
export function significant(value: number, digits: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`cannot show ${value}`);
  if (!Number.isInteger(digits) || digits < 1 || digits > 12)
    throw new RangeError(`digits must be a whole number from 1 to 12, not ${digits}`);
  // The last bits are noise of the conversion: 2.3749999999999996 in was typed as 2.375 in.
  const clean = Number(value.toPrecision(14));
  const [mantissa = "", power = ""] = clean.toExponential(digits - 1).split("e");
  const exponent = Number(power);
  const rounded = Number(`${mantissa}e${power}`);
  const trim = (text: string) =>
    rounded === clean && text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  if (exponent < -6 || exponent >= 15) return `${trim(mantissa)}e${exponent}`;
  return trim(rounded.toFixed(Math.max(0, digits - 1 - exponent)));
}
