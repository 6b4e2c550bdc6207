import type { Base, PlanResponse } from "@hoopstay/frame";
import type { LoadedBase } from "./plan-arbitrary.ts";

const over = (side: "left" | "right") => (side === "left" ? "right" : "left");

/** A base seen with its rear end in front: places change, ways, turns and feet do not. */
export function frontToBack({ base, load }: LoadedBase): LoadedBase {
  const turned = <Placed extends { readonly y: number }>(one: Placed): Placed => ({
    ...one,
    y: base.length - one.y,
  });
  return {
    base: {
      ...base,
      hoops: base.hoops.map(turned),
      crossMembers: base.crossMembers.map(turned),
      sideHold: base.sideHold === "evenly" ? "evenly" : base.sideHold.map(turned),
    },
    load,
  };
}

/** Six or four numbers a hoop with its feet changed over. */
const swapped = (values: ArrayLike<number>): number[] =>
  Array.from(values, (_, i) => values[i - (i % 4) + ((i + 2) % 4)] as number);

/** A base in a mirror along it: feet change over, ways and turns change sense. */
export function leftToRight({ base, load }: LoadedBase): LoadedBase {
  const { left, right, sideHold } = base;
  const mirrored: Base = {
    ...base,
    left: right,
    right: left,
    hoops: base.hoops.map(({ y, stiffness }) => ({
      y,
      stiffness: [2, 3, 0, 1].flatMap((i) =>
        [2, 3, 0, 1].map((j) => stiffness[4 * i + j] as number),
      ),
    })),
    sideHold:
      sideHold === "evenly"
        ? "evenly"
        : sideHold.map((anchor) => ({ ...anchor, rail: over(anchor.rail) })),
  };
  return { base: mirrored, load: swapped(load).map((value) => 0 - value) };
}

/** Forces of the feet of a base as its mirror image should have them. */
export const mirroredFeet = ({ footForce }: PlanResponse): number[] =>
  swapped(footForce).map((value) => 0 - value);
