import { type Complaint, measured, showMeasured } from "@hoopstay/core";
import type { House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { takeOff, withBallast } from "../take-off/take-off.ts";

/** The complaint about ground that does not even carry the house on its two rails. */
export function bearingComplaint(house: House, { bearing }: Site): Complaint | null {
  const { W } = withBallast(takeOff(house).high, house);
  const carried = 2 * house.rail.width * house.rail.length * bearing;
  if (W <= carried) return null;
  const force = (value: number): string => {
    const both = (["us", "si"] as const).map((system) =>
      showMeasured(measured(value, "force"), system),
    );
    return `${both[0]} (${both[1]})`;
  };
  return {
    code: "ground-outside",
    given: `the house weighs up to ${force(W)}, the ground carries ${force(carried)}`,
    expected: "ground that carries the house on its rails",
    mend: "Check ground.bearing, the soil class and the rails; on softer ground the house sinks.",
  };
}
