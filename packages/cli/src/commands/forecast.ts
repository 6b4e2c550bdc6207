import { type QuantityRead, Refusal, readQuantity } from "@hoopstay/core";

/** No gust near the ground comes near this, m/s: beyond it a typing error is certain. */
const greatest = 200;

const expected =
  'the forecast gust with its unit, such as --gust "45 mph": the strongest three seconds, never a mean speed';

/**
 * The gust of the forecast, m/s; null where none is given.
 *
 * @throws Refusal: unit-missing and the other codes of a quantity, not-positive, out-of-range
 */
export function forecastOf(given: string | undefined): number | null {
  if (given === undefined) return null;
  const read = readQuantity(given, "speed");
  if (read.ok && read.value > 0 && read.value <= greatest) return read.value;
  throw new Refusal([complaintOf(read, given)]);
}

function complaintOf(read: QuantityRead, typed: string) {
  const key = "--gust";
  if (!read.ok) {
    const { code, given, mend } = read;
    return { code, key, given, expected, mend };
  }
  const code = read.value > 0 ? "out-of-range" : "not-positive";
  const mend = "Take the largest gust of the forecast for the hours to come.";
  return { code, key, given: typed, expected, mend } as const;
}
