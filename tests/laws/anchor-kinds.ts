import type { Draw } from "./draw.ts";
import type { Tree } from "./entry.ts";
import { Size } from "./size.ts";

const rod = (draw: Draw): Tree => ({ diameter: draw.small(20, 40), wall: undefined });

const makers: Readonly<Record<string, (draw: Draw) => Tree>> = {
  screw: (draw) => ({
    plates: [{ diameter: draw.small(100, 250), depth: draw.length(0.6, 1.5) }],
    shaft: rod(draw),
    stands: draw.pick([undefined, "upright", "in line"]),
    direct: draw.pick([undefined, "yes"]),
  }),
  "driven plate": (draw) => ({
    plate_area: draw.amount([0.1, 0.6, "ft2"], [0.01, 0.06, "m2"]),
    depth: draw.length(0.6, 1.5),
  }),
  stake: (draw) => ({
    shaft: rod(draw),
    depth: draw.length(0.5, 1.2),
    direct: draw.pick([undefined, "yes"]),
  }),
  "picket set": (draw) => ({ set: draw.pick(["1", "1-1", "2-1", "1-1-1", "3-2-1"]) }),
  deadman: (draw) => ({
    body: draw.pick(["timber", "log"]),
    face: draw.small(150, 300),
    length: draw.length(0.9, 2.4),
    depth: draw.length(0.7, 1.6),
  }),
  block: (draw) => ({
    weight: draw.weight(200, 1200),
    width: draw.length(0.4, 1),
    tie_height: draw.maybe(50, () => draw.length(0.1, 0.4)),
  }),
};

const forms = Object.keys(makers);

/** One or two kinds of anchor that the farm has. */
export const anchorKinds = (draw: Draw): Tree[] =>
  Array.from({ length: draw.whole(1, 2) }, (_, at) => {
    const form = draw.pick(forms);
    const aslant = draw.chance(60);
    return {
      id: `kind-${at + 1}`,
      form,
      ...(makers[form] as (draw: Draw) => Tree)(draw),
      tether: draw.maybe(50, () => ({ working_load: draw.force(4000, 15_000) })),
      ...(aslant
        ? {
            angle: new Size(draw.whole(35, 70), "deg"),
            toward: draw.pick(["out", "front", "back"]),
          }
        : {}),
    };
  });
