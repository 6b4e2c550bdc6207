import { type Feel, feelRows } from "@hoopstay/ground";
import * as z from "zod";
import { keys, quantity, words, yes } from "./field.ts";

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
  kind: z.enum(grounds),
  wet: yes("wet, or may be wet").optional(),
  frozen: yes("frozen now: frost holds nothing, it leaves").optional(),
  soil_class: z.enum(soilClassNames).meta({ description: "24 CFR 3285.202 class" }).optional(),
  bearing: quantity("pressure", "allowable bearing pressure, where an engineer gave it").optional(),
  friction: keys({
    low: quantity("fraction", "low friction coefficient of rail on ground", "not-negative"),
    reason: words("who says so and why"),
  }).optional(),
  like: z
    .enum(["sand", "clay", "unknown"])
    .meta({ description: "does it crumble like sand, or roll to a thread like clay" })
    .optional(),
  probe: quantity("moment", "torque of a soil probe at anchor depth", "not-negative").optional(),
  blow_count: z.int().min(0).max(200).meta({ description: "N of ASTM D1586" }).optional(),
  feel: z
    .array(z.enum(feels))
    .min(1)
    .meta({ description: "tests with hand, heel and rod at anchor depth" })
    .optional(),
  told_when: z
    .enum(["wet", "dry"])
    .meta({ description: "state of the ground when it was felt or probed" })
    .optional(),
  engineer: keys(
    {
      friction_angle: quantity("angle", "of sand-like ground").optional(),
      shear_strength: quantity("pressure", "undrained, of clay-like ground").optional(),
      unit_weight: quantity("unit-weight", "moist for sand, total for clay"),
      by: words("who gave the values, and when"),
    },
    "values of an engineer or a laboratory",
  ).optional(),
  water_table: quantity("length", "below ground, where known", "not-negative").optional(),
  frost_depth: quantity("length", "frost line below ground", "not-negative").optional(),
});

export type GroundInput = z.output<typeof groundSchema>;

/** One line of the pull log. */
export const pullTestSchema = keys(
  {
    date: words("day of the test"),
    place: words("where; left out for this place").optional(),
    anchor: words("id of the anchor kind pulled"),
    pull: quantity("force", "largest pull reached"),
    ended: z
      .enum(["failed", "stopped"])
      .meta({ description: "failed: it gave way; stopped: you stopped before it did" }),
    angle: quantity("angle", "of the pull above the ground").optional(),
    moved_up: quantity("length", "head moved up", "not-negative").optional(),
    moved_sideways: quantity("length", "head moved sideways", "not-negative").optional(),
    ground: z.enum(["wet", "dry", "frozen", "unknown"]).optional(),
    repeats: z
      .int()
      .min(0)
      .max(100)
      .meta({ description: "pulls after the first during which the movement did not grow" })
      .optional(),
  },
  "an anchor pulled on the spot",
);
