import { roundedOutline } from "../hollow-rectangle/rounded-outline.ts";
import { cornerRadii } from "./corner-radii.ts";
import type { Tube } from "./tube.ts";

/**
 * Outer surface per metre of length, at nominal size: what paint or zinc covers from outside.
 *
 * @param tube section, m
 * @returns m2/m
 * @example // a 2 in round bar: pi times 2 in
 */
export function outsidePerimeter(tube: Tube): number {
  switch (tube.kind) {
    case "round":
      return Math.PI * tube.outside;
    case "rectangular":
      return roundedOutline(
        tube.depth,
        tube.width,
        cornerRadii(tube.convention, tube.wall).outside * tube.wall,
      );
    case "flat":
      return 2 * (tube.width + tube.thickness);
    case "angle":
      return 2 * (tube.legs[0] + tube.legs[1]);
    case "bar":
      return Math.PI * tube.diameter;
  }
}
