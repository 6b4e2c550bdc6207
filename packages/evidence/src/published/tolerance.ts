import { power } from "@hoopstay/core";

/** One part of an allowance: so many percent, printed last digits, or the quantity's own unit. */
export interface TolerancePart {
  readonly value: number;
  readonly unit: string;
  readonly reason: string;
}

/**
 * What is allowed around a printed number, in its own unit. Parts add up: half the last printed
 * digit for the source's rounding, say, and a percentage for a rounded input.
 */
export function allowance(printed: string, parts: readonly TolerancePart[]): number {
  const value = Math.abs(Number(printed));
  const total = parts.reduce((sum, part) => sum + partOf(printed, value, part), 0);
  return total + value * 1e-12;
}

function partOf(printed: string, value: number, part: TolerancePart): number {
  if (part.unit === "%") return (part.value / 100) * value;
  if (part.unit === "last digit") return part.value * lastDigit(printed);
  return part.value;
}

/** Worth of the last digit of a number as printed: 0.01 for `3.05`, 1 for `140`. */
function lastDigit(printed: string): number {
  const [mantissa = "", exponent = "0"] = printed.toLowerCase().split("e");
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  return power(10, Number(exponent) - decimals);
}

/** The same in words: how much, of what, and why. */
export const toleranceWords = (parts: readonly TolerancePart[]): string =>
  parts
    .map(({ value, unit, reason }) =>
      value === 0 ? `none: ${reason}` : `${value} ${unit === "1" ? "" : `${unit} `}(${reason})`,
    )
    .join(" and ");
