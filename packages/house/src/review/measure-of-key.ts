import { type Measure, type Measured, measured } from "@hoopstay/core";

const byName: readonly (readonly [RegExp, Measure])[] = [
  [/^ground\.probe$/, "moment"],
  [/(^|\.)(weight|weight_high|empty|full|pull|total|high|working_load|breaking_load)$/, "force"],
  [/on_driven_wheels$/, "force"],
  [/speed$/, "speed"],
  [/(bearing|\.yield|shear_strength)$/, "pressure"],
  [/water\.volume$/, "volume"],
  [/water\.fill$/, "ratio"],
  [/unit_weight$/, "unit-weight"],
  [/(\.area$|plate_area$|openings\.)/, "area"],
  [/(angle|drag_slope)$/, "angle"],
  [/(friction\.low|known_scatter|mass)$/, "ratio"],
];

/** The value of a quantity key with what it measures, for the table of inputs. */
export function measureOfKey(
  file: "house" | "site",
  key: string,
  value: number,
): Measured | string {
  if (key.endsWith(".mass")) return `${value.toPrecision(3)} kg/m2`;
  const found = byName.find(([pattern]) => pattern.test(key));
  return measured(value, found?.[1] ?? "length", file === "house" ? 4 : 3);
}
