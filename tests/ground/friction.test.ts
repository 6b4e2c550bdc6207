import { bareSoilFriction, type GroundKind, holdingFriction } from "@hoopstay/ground";
import { describe, expect, test } from "vitest";

const grounds: readonly GroundKind[] = [
  "unknown",
  "grass",
  "clay",
  "silt",
  "silty sand",
  "sand",
  "gravel",
  "mud",
  "ice",
];

describe("holding friction", () => {
  test.each([
    ["unknown", false, 0.15],
    ["grass", false, 0.15],
    ["clay", false, 0.15],
    ["sand", true, 0.15],
    ["gravel", true, 0.15],
    ["sand", false, 0.3],
    ["mud", false, 0],
    ["ice", false, 0],
    ["ice", true, 0],
  ] as const)("%s, wet %s: %s", (ground, wet, friction) => {
    expect(holdingFriction(ground, wet).friction).toBe(friction);
  });

  test("wet never holds more than dry, on any ground, and only bare dry soil has a read value", () => {
    for (const ground of grounds) {
      const [dry, wet] = [holdingFriction(ground, false), holdingFriction(ground, true)];
      expect(wet.friction).toBeLessThanOrEqual(dry.friction);
      expect(wet.citation.grade).toBe("judgement");
      const named = bareSoilFriction[ground] !== undefined;
      expect(dry.citation.grade).toBe(named ? "read" : "judgement");
    }
  });
});
