import { type Feel, feelRows } from "@hoopstay/ground";
import type * as z from "zod/mini";
import { choice, count, keys, list, optional, words, yes } from "./field.ts";
import { quantity } from "./quantity.ts";

const grounds = [
  "unknown",
  "grass",
  "clay",
  "silt",
  "silty sand",
  "sand",
  "gravel",
  "mud",
  "ice",
] as const;

const soilClassNames = ["1", "2", "3", "4A", "4B", "5"] as const;

const feels = Object.keys(feelRows) as [Feel, ...Feel[]];

/** The ground under the rails and around the anchors, by what an owner can tell. */
export const groundSchema = keys({
  kind: choice(grounds),
  wet: optional(yes("wet, or may be wet")),
  frozen: optional(yes("frozen now: frost holds nothing, it leaves")),
  soil_class: optional(choice(soilClassNames, "24 CFR 3285.202 class")),
  bearing: optional(quantity("pressure", "allowable bearing pressure, where an engineer gave it")),
  friction: optional(
    keys({
      low: quantity("fraction", "low friction coefficient of rail on ground", "not-negative"),
      reason: words("who says so and why"),
    }),
  ),
  like: optional(
    choice(["sand", "clay", "unknown"], "does it crumble like sand, or roll to a thread like clay"),
  ),
  probe: optional(quantity("moment", "torque of a soil probe at anchor depth", "not-negative")),
  blow_count: optional(count("N of ASTM D1586", 0, 200)),
  feel: optional(
    list(choice(feels), { about: "tests with hand, heel and rod at anchor depth", least: 1 }),
  ),
  told_when: optional(choice(["wet", "dry"], "state of the ground when it was felt or probed")),
  engineer: optional(
    keys(
      {
        friction_angle: optional(quantity("angle", "of sand-like ground")),
        shear_strength: optional(quantity("pressure", "undrained, of clay-like ground")),
        unit_weight: quantity("unit-weight", "moist for sand, total for clay"),
        by: words("who gave the values, and when"),
      },
      "values of an engineer or a laboratory",
    ),
  ),
  water_table: optional(quantity("length", "below ground, where known", "not-negative")),
  frost_depth: optional(quantity("length", "frost line below ground", "not-negative")),
});

export type GroundInput = z.output<typeof groundSchema>;

/** One line of the pull log. */
export const pullTestSchema = keys(
  {
    date: words("day of the test"),
    place: optional(words("where; left out for this place")),
    anchor: words("id of the anchor kind pulled"),
    pull: quantity("force", "largest pull reached"),
    ended: choice(["failed", "stopped"], "failed: it gave way; stopped: you stopped before it did"),
    angle: optional(quantity("angle", "of the pull above the ground")),
    moved_up: optional(quantity("length", "head moved up", "not-negative")),
    moved_sideways: optional(quantity("length", "head moved sideways", "not-negative")),
    ground: optional(choice(["wet", "dry", "frozen", "unknown"])),
    repeats: optional(
      count("pulls after the first during which the movement did not grow", 0, 100),
    ),
  },
  "an anchor pulled on the spot",
);
