import { cite } from "@hoopstay/core";
import type { RoundTube } from "../tube/tube.ts";
import type { CatalogueSize } from "./size.ts";
import { tradeInches } from "./trade-inches.ts";

/** A pipe, and the size by which it is called, m: less than its outside. */
interface Pipe extends CatalogueSize {
  readonly nominal: number;
  readonly shape: Omit<RoundTube, "galvanized">;
}

/** Nominal pipe size, true outside diameter, wall of schedule 40 and of schedule 80, inches. */
const rows = [
  ["1", "1.315", "0.133", "0.179"],
  ["1-1/4", "1.660", "0.140", "0.191"],
  ["1-1/2", "1.900", "0.145", "0.200"],
  ["2", "2.375", "0.154", "0.218"],
  ["2-1/2", "2.875", "0.203", "0.276"],
] as const;

/** Steel pipe to ASTM A53, schedule 40 (STD) and 80 (XS), sold by its nominal size. */
export const pipe: readonly Pipe[] = rows.flatMap(([nominal, outside, schedule40, schedule80]) =>
  (
    [
      ["STD", "40", schedule40],
      ["XS", "80", schedule80],
    ] as const
  ).map(([strength, schedule, wall]) => ({
    name: `Pipe${nominal}${strength}`,
    nominal: tradeInches(nominal),
    aliases: [`NPS ${nominal} sch ${schedule}`, `Pipe ${nominal} sch ${schedule}`],
    shape: {
      kind: "round" as const,
      outside: tradeInches(outside),
      wall: tradeInches(wall),
      convention: "AISC" as const,
    },
    citation: cite("asme-b36-10", "outside diameter and wall", "second-hand"),
  })),
);
