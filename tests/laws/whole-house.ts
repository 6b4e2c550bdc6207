import { anchorKinds } from "./anchor-kinds.ts";
import type { Draw } from "./draw.ts";
import type { Entry, Tree } from "./entry.ts";
import { Size } from "./size.ts";
import { barTube, railTube, roundTube, type TubeKinds } from "./tubes.ts";

/** What a law asks of the houses it is about. */
export interface HouseKinds extends TubeKinds {
  /** Nothing in it comes from a table or a default in absolute sizes. */
  readonly plainTubes: boolean;
}

const negative = (size: Size, draw: Draw): Size => (draw.chance(50) ? size.times(-1) : size);

interface Extent {
  readonly span: Size;
  readonly rise: Size;
  /** About where the arc springs, m above the ground. */
  readonly springing: number;
  readonly length: Size;
  readonly count: number;
}

/** Round up to the half circle, pointed above it or with its arcs' centres told. */
function hoopsOf(draw: Draw, kinds: HouseKinds): { hoops: Tree; extent: Extent } {
  const pointed = draw.chance(40);
  const offset = pointed && draw.chance(25);
  const span = draw.length(3, 9);
  const part = (share: number) => Math.max(0.6, share * span.si);
  const rise =
    pointed && !offset ? draw.length(part(0.51), part(0.57)) : draw.length(part(0.16), part(0.5));
  const bays = draw.whole(2, 14);
  const spacing = draw.length(0.9, 2.2);
  const counted = draw.chance(30);
  const length = counted ? draw.length(bays * 0.9, bays * 2.2) : spacing.times(bays);
  const leg = draw.maybe(40, () => draw.length(0.1, 0.9));
  const hoops: Tree = {
    shape: pointed ? "pointed" : "round",
    span,
    rise: pointed || rise.si <= span.si / 2 ? rise : span.times(0.5),
    leg,
    centre_offset: offset ? draw.length(0.1, 0.6) : undefined,
    length,
    ...(counted ? { count: bays + 1 } : { spacing }),
    tube: roundTube(draw, kinds, 42, 74),
    joints: draw.maybe(15, () => [
      { how: draw.pick(["swaged", "coupled"]), along: draw.length(0.2, 1.5) },
    ]),
  };
  return {
    hoops,
    extent: { span, rise, springing: 0.15 + (leg?.si ?? 0), length, count: bays + 1 },
  };
}

function feetOf(draw: Draw, kinds: HouseKinds, { length }: Extent): Tree {
  const rail = draw.maybe(60, () => new Size(length.amount + (draw.us ? 1 : 0.4), length.unit));
  return {
    stubs: {
      tube: roundTube(draw, kinds, 34, 38),
      length: draw.small(250, 400),
      bolts: draw.maybe(50, () => ({
        count: draw.whole(1, 2),
        diameter: draw.small(6, 10),
        grade: draw.pick(["SAE 5", "A307", undefined]),
      })),
      weld: draw.maybe(40, () => ({ leg: draw.small(3, 5) })),
    },
    rails: {
      tube: railTube(draw, kinds),
      length: length.unit === "in" ? undefined : rail,
      noses: draw.maybe(40, () => ({ front: draw.length(0.2, 0.5), back: draw.length(0.2, 0.5) })),
      splices: draw.maybe(15, () => ({
        count: 4,
        length: draw.small(300, 450),
        width: draw.small(60, 90),
        thickness: draw.small(5, 8),
      })),
    },
  };
}

function barsOf(draw: Draw, kinds: HouseKinds, { count, span, rise, springing }: Extent): Tree {
  const bar = () => ({ tube: barTube(draw, kinds) });
  const share = (from: number, to: number): Size => draw.length(from * rise.si, to * rise.si);
  const placed = () => ({
    ...bar(),
    count: 2 * count,
    length: draw.length(0.4, 1),
    height: share(0.5, 0.9),
  });
  return {
    cross_members: draw.maybe(60, () => ({ ...bar(), count: draw.whole(1, 5) })),
    corner_braces: draw.maybe(30, () => ({ ...bar(), count: 4, length: draw.length(0.5, 1.5) })),
    drawbar: draw.maybe(30, () => ({ ...bar(), length: span, end: draw.pick(["front", "back"]) })),
    ridge: draw.maybe(80, bar),
    purlins: draw.maybe(60, () => ({
      ...bar(),
      count: draw.whole(1, 5),
      under_cover: draw.pick([undefined, "no"]),
    })),
    collar_ties: draw.maybe(40, () => ({
      ...bar(),
      count,
      height: draw.length(springing + 0.3 * rise.si, springing + 0.8 * rise.si),
    })),
    truss_bars: draw.maybe(10, placed),
    knee_braces: draw.maybe(10, placed),
    end_braces: draw.maybe(15, () => ({ ...placed(), count: 4 })),
  };
}

function coverOf(draw: Draw, { span, rise, length }: Extent): Tree {
  const wood = () => draw.pick([undefined, "spruce-pine-fir", "southern-pine", "hem-fir"]);
  const board = () => ({ thickness: draw.small(25, 40), width: draw.small(90, 240), wood: wood() });
  const wall = () => ({
    cladding: draw.maybe(60, () => ({
      mass: draw.amount([0.1, 0.5, "lb/ft2"], [0.2, 2, "kg/m2"]),
    })),
    framing: draw.maybe(60, () => ({ weight: draw.weight(10, 60) })),
    doors: draw.maybe(70, () => [
      {
        width: draw.length(0.8, 0.6 * span.si),
        height: draw.length(0.4 * rise.si, 0.8 * rise.si),
        weight: draw.maybe(50, () => draw.weight(8, 30)),
      },
    ]),
    removable: draw.pick([undefined, "yes", "no"]),
  });
  const side = () => ({
    length: draw.length(0.5 * length.si, 0.95 * length.si),
    height: draw.length(0.3, 1.2),
  });
  return {
    base_boards: draw.maybe(60, board),
    hip_boards: draw.maybe(40, () => ({
      ...board(),
      height: draw.length(0.4 * rise.si, 0.7 * rise.si),
    })),
    end_rails: draw.maybe(20, board),
    end_walls: draw.maybe(80, () => ({ front: draw.maybe(85, wall), back: draw.maybe(85, wall) })),
    film: draw.maybe(70, () => ({
      ...(draw.chance(70)
        ? { layers: draw.whole(1, 2), thickness: new Size(6, "mil") }
        : { mass: draw.amount([0.03, 0.1, "lb/ft2"], [0.15, 0.4, "kg/m2"]) }),
      removable: draw.pick([undefined, "yes", "no"]),
    })),
    roll_up_sides: draw.maybe(70, () => ({
      left: draw.maybe(85, side),
      right: draw.maybe(85, side),
    })),
    vents: draw.maybe(25, () => [
      {
        wall: draw.pick(["roof", "left", "right", "front", "back"]),
        area: draw.amount([1, 9, "ft2"], [0.1, 0.9, "m2"], 16),
        shuts: draw.pick([undefined, "no"]),
      },
    ]),
    gaps: draw.maybe(40, () => ({ sides: draw.small(5, 60), ends: draw.small(5, 60) })),
  };
}

/** A place on the house, well inside its rails. */
const placeOf = (draw: Draw, { span, length }: Extent): Tree => ({
  across: draw.maybe(60, () => negative(draw.length(0.05, 0.45 * span.si), draw)),
  along: draw.maybe(60, () => negative(draw.length(0.05, 0.4 * length.si), draw)),
  up: draw.maybe(60, () => draw.length(0.1, 1)),
});

function contentsOf(draw: Draw, extent: Extent): Tree {
  const face = () => ({ width: draw.length(0.4, 1.2), height: draw.length(0.4, 1.2) });
  const { span, length } = extent;
  return {
    bins: draw.maybe(25, () => [
      {
        what: "feed bin",
        empty: draw.weight(30, 70),
        full: draw.weight(150, 400),
        at: placeOf(draw, extent),
        side_face: face(),
        end_face: face(),
        outside: draw.pick([undefined, "yes", "no"]),
      },
    ]),
    fittings: draw.maybe(35, () => [
      {
        what: "roosts",
        weight: draw.weight(20, 60),
        weight_high: draw.maybe(40, () => draw.weight(60, 120)),
        at: placeOf(draw, extent),
      },
    ]),
    ballast: draw.maybe(35, () =>
      Array.from({ length: draw.whole(1, 2) }, () => ({
        what: "blocks",
        ...(draw.chance(80)
          ? { weight: draw.weight(50, 900) }
          : {
              water: {
                volume: draw.amount([50, 275, "gal"], [200, 1000, "l"]),
                fill: new Size(draw.whole(1, 20) * 5, "%"),
                closed: draw.pick(["yes", "no"]),
                level_seen: draw.pick(["yes", "no"]),
                may_flood_or_drain: draw.pick(["no", "yes"]),
              },
            }),
        at: placeOf(draw, extent),
        fixed: draw.pick(["yes", "yes", "no"]),
      })),
    ),
    measured_weight: draw.maybe(12, () => ({
      total: draw.weight(300, 1800),
      at: draw.maybe(50, () => ({
        across: negative(draw.length(0, 0.1 * span.si), draw),
        along: negative(draw.length(0, 0.1 * length.si), draw),
        up: draw.maybe(80, () => draw.length(0.5, 1.5)),
      })),
    })),
  };
}

/** Ends held lengthwise and the rest outward, strong enough for many a wind. */
function wellHeld(draw: Draw, { length }: Extent): Entry {
  const [pull, angle] = [draw.force(6000, 30_000), new Size(draw.whole(30, 60), "deg")];
  const inner = draw.length(0, 0.2 * length.si);
  const end = draw.length(0.35 * length.si, 0.48 * length.si);
  const rows = [
    { along: end, toward: "front" },
    { along: inner, toward: "out" },
    { along: inner.times(-1), toward: "out" },
    { along: end.times(-1), toward: "back" },
  ];
  return ["left", "right"].flatMap((side) => rows.map((row) => ({ side, ...row, pull, angle })));
}

function anchorsOf(draw: Draw, extent: Extent, kinds: readonly string[]): Entry {
  const { length } = extent;
  if (draw.chance(50)) return wellHeld(draw, extent);
  const slanted = draw.chance(60);
  const rows = draw.whole(1, 3);
  const both = draw.chance(75);
  const one = (side: string, name: string, along: Size): Tree => {
    const byKind = kinds.length > 0 && draw.chance(50);
    const aslant = !byKind && slanted && draw.chance(70);
    return {
      name,
      side,
      along,
      ...(byKind ? { kind: draw.pick(kinds) } : { pull: draw.force(1500, 20_000) }),
      ...(aslant
        ? {
            angle: new Size(draw.whole(30, 75), "deg"),
            toward: draw.pick(["out", "in", "front", "back"]),
          }
        : {}),
    };
  };
  return Array.from({ length: rows }, (_, row) => {
    const along = negative(draw.length(0, 0.48 * length.si), draw);
    const sides = both ? ["left", "right"] : [draw.pick(["left", "right", "middle"])];
    return sides.map((side) => one(side, `${side} ${row + 1}`, along));
  }).flat();
}

function statesOf(draw: Draw): Tree {
  const area = () => draw.amount([0, 60, "ft2"], [0, 6, "m2"], 12);
  const states = draw.maybe(15, () => [
    {
      id: "storm-damage",
      words: "torn cover",
      openings: {
        left: area(),
        right: draw.maybe(50, area),
        front: draw.maybe(50, area),
        back: draw.maybe(50, area),
        roof: draw.maybe(50, area),
      },
      missing: draw.maybe(30, () => [draw.pick(["front", "back"])]),
    },
  ]);
  return { states, only_these_states: states && draw.chance(20) ? "yes" : undefined };
}

/** A house as an owner would write it: any of the keys, in feet and inches or in metres. */
export function houseTree(draw: Draw, kinds: HouseKinds): Tree {
  const { hoops, extent } = hoopsOf(draw, kinds);
  const listed = draw.maybe(40, () => anchorKinds(draw));
  return {
    house: "Random house",
    hoops,
    ...feetOf(draw, kinds, extent),
    ...barsOf(draw, kinds, extent),
    ...coverOf(draw, extent),
    ...contentsOf(draw, extent),
    anchor_kinds: listed,
    anchors: draw.maybe(75, () =>
      anchorsOf(
        draw,
        extent,
        (listed ?? []).map(({ id }) => String(id)),
      ),
    ),
    ...statesOf(draw),
  };
}
