import type { Complaint, RefusalCode } from "@hoopstay/core";

/** A complaint about a number. */
export const complain = (
  code: RefusalCode,
  key: string,
  given: number,
  expected: string,
  mend: string,
): Complaint => ({ code, key, given: String(given), expected, mend });

/** Complains about what is no finite number. */
export const finite = (key: string, value: number): Complaint[] =>
  Number.isFinite(value)
    ? []
    : [complain("not-a-number", key, value, "a finite number", "check the value")];

/** Complains about what is not above zero. */
export function positive(key: string, value: number): Complaint[] {
  if (!(Number.isFinite(value) && value <= 0)) return finite(key, value);
  return [complain("not-positive", key, value, "a number above zero", "check the value")];
}

/** Complains about a place that is not on a line of the given length. */
export function within(key: string, place: number, length: number): Complaint[] {
  if (place >= 0 && place <= length) return [];
  if (!Number.isFinite(place)) return finite(key, place);
  const expected = `a place from 0 to ${length} m along the hoop`;
  return [complain("out-of-range", key, place, expected, "check the place")];
}
