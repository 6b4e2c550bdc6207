import { Refusal } from "@hoopstay/core";
import { cornerRadii } from "./corner-radii.ts";
import type { Tube } from "./tube.ts";

/** Smallest and largest dimension of a section, m: beyond them a unit has been mistaken. */
const smallest = 1e-5;
const largest = 10;

/** Thick end of the wall tolerance; a tube must still be one at this wall. */
const thickest = 1.1;

/**
 * Refuses a section that cannot exist or cannot be computed. Cheap enough for every call.
 *
 * @param tube section, dimensions in m
 * @throws Refusal `not-positive` for a size that is not above zero or not a number; `out-of-range`
 *   for a size under 0.01 mm or over 10 m, a wall too thick for the tube (outside diameter under
 *   2.5 walls; a side too short for the inside corners), a flat thicker than wide, an angle thicker
 *   than its leg
 */
export function refuseImpossible(tube: Tube): void {
  switch (tube.kind) {
    case "round":
      size("outside diameter", tube.outside);
      size("wall", tube.wall);
      if (tube.outside < 2.5 * tube.wall) tooThick("a diameter of at least 2.5 walls");
      return;
    case "rectangular": {
      size("depth", tube.depth);
      size("width", tube.width);
      size("wall", tube.wall);
      const least = thickest * (2 + 2 * cornerRadii(tube.convention, tube.wall).inside);
      if (Math.min(tube.depth, tube.width) < least * tube.wall) {
        tooThick(`sides of at least ${least.toFixed(1)} walls, so that the inside corners fit`);
      }
      return;
    }
    case "flat":
      size("width", tube.width);
      size("thickness", tube.thickness);
      if (tube.thickness > tube.width) tooThick("a thickness of at most the width");
      return;
    case "angle":
      size("first leg", tube.legs[0]);
      size("second leg", tube.legs[1]);
      size("thickness", tube.thickness);
      if (tube.thickness >= Math.min(tube.legs[0], tube.legs[1])) {
        tooThick("a thickness below the shorter leg");
      }
      return;
    case "bar":
      size("diameter", tube.diameter);
  }
}

function size(name: string, value: number): void {
  if (value >= smallest && value <= largest) return;
  if (!(value > 0)) {
    refuse("not-positive", `a ${name} above zero`, `Give the ${name} as measured.`);
  }
  refuse("out-of-range", `a ${name} between 0.01 mm and 10 m`, `Check the unit of the ${name}.`);
}

function tooThick(expected: string): never {
  refuse("out-of-range", expected, "Check the wall, and that it is not a gauge number.");
}

function refuse(code: "not-positive" | "out-of-range", expected: string, mend: string): never {
  throw new Refusal([{ code, expected, mend }]);
}
