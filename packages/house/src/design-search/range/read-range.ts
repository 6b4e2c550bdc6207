import type { HouseToday } from "../../compare/read-variant.ts";
import { priceComplaints } from "../../compare/stock/price-complaints.ts";
import type { PathComplaint } from "../../read/complaints.ts";
import { askedRange } from "./asked-range.ts";
import { builtInRange } from "./built-in-range.ts";
import { type DesignRange, fittingRange } from "./design-range.ts";

/** The range to look through: the house file's, or one round today's design. */
export function readRange({ input, house }: HouseToday, complaints: PathComplaint[]): DesignRange {
  complaints.push(...priceComplaints(input));
  const { search } = input;
  if (!search) return builtInRange(input, house);
  const found: PathComplaint[] = [];
  const range = fittingRange(askedRange(input, house, search, found), house);
  for (const [key, kept] of [
    ["hoops", range.hoops],
    ["rails", range.rails],
  ] as const) {
    if (kept.length > 0 || found.length > 0) continue;
    found.push({
      path: ["search", key, "tubes"],
      code: "out-of-range",
      given: "no tube that goes with the stubs",
      expected: "a tube that the stubs of today's house fit",
      mend: "Hoops go over or into the stubs as today's do; rails are as wide as the stubs.",
    });
  }
  complaints.push(...found);
  return range;
}
