import type { Entry, Tree } from "./entry.ts";
import type { Farm } from "./farms.ts";
import { Size } from "./size.ts";
import { compass } from "./whole-site.ts";

export type Mirror = "left and right" | "front and back";

const tree = (entry: Entry): Tree => (entry ?? {}) as Tree;
const trees = (entry: Entry): Tree[] => (entry ?? []) as Tree[];
const minus = (entry: Entry): Entry => (entry instanceof Size ? entry.times(-1) : entry);

const pairs = {
  "left and right": ["left", "right"],
  "front and back": ["front", "back"],
} as const;

/** The word of the other side; any other word stays. */
function otherSide(word: Entry, mirror: Mirror): Entry {
  const [one, other] = pairs[mirror];
  return word === one ? other : word === other ? one : word;
}

function swapped(entry: Entry, mirror: Mirror): Entry {
  if (entry === undefined) return undefined;
  const [one, other] = pairs[mirror];
  return { ...tree(entry), [one]: tree(entry)[other], [other]: tree(entry)[one] };
}

function placed(entry: Entry, mirror: Mirror): Entry {
  if (entry === undefined) return undefined;
  const key = mirror === "left and right" ? "across" : "along";
  return { ...tree(entry), [key]: minus(tree(entry)[key]) };
}

const withPlaces = (entry: Entry, mirror: Mirror): Entry =>
  entry === undefined
    ? undefined
    : trees(entry).map((one) => ({ ...one, at: placed(one.at, mirror) }));

/** On the middle line outward is to the right: its mirror image is inward. */
const turned = { out: "in", in: "out" } as const;

function mirroredAnchor(anchor: Tree, kinds: readonly Tree[], mirror: Mirror): Tree {
  if (mirror === "front and back") {
    return { ...anchor, along: minus(anchor.along), toward: otherSide(anchor.toward, mirror) };
  }
  const lead = anchor.toward ?? kinds.find(({ id }) => id === anchor.kind)?.toward;
  const middle = anchor.side === "middle" && (lead === "out" || lead === "in");
  return {
    ...anchor,
    side: otherSide(anchor.side, mirror),
    ...(middle ? { toward: turned[lead] } : {}),
  };
}

function mirroredHouse(house: Tree, mirror: Mirror): Tree {
  const lengthwise = mirror === "front and back";
  const list = (entry: Entry, change: (one: Tree) => Tree): Entry =>
    entry === undefined ? undefined : trees(entry).map(change);
  const kinds = trees(house.anchor_kinds);
  const measured = house.measured_weight;
  const rails = tree(house.rails);
  const drawbar = house.drawbar;
  return {
    ...house,
    rails: lengthwise ? { ...rails, noses: swapped(rails.noses, mirror) } : rails,
    drawbar: drawbar && { ...tree(drawbar), end: otherSide(tree(drawbar).end, mirror) },
    end_walls: lengthwise ? swapped(house.end_walls, mirror) : house.end_walls,
    roll_up_sides: lengthwise ? house.roll_up_sides : swapped(house.roll_up_sides, mirror),
    vents: list(house.vents, (one) => ({ ...one, wall: otherSide(one.wall, mirror) })),
    bins: withPlaces(house.bins, mirror),
    fittings: withPlaces(house.fittings, mirror),
    ballast: withPlaces(house.ballast, mirror),
    measured_weight: measured && { ...tree(measured), at: placed(tree(measured).at, mirror) },
    anchor_kinds: list(house.anchor_kinds, (one) => ({
      ...one,
      toward: otherSide(one.toward, mirror),
    })),
    anchors: list(house.anchors, (one) => mirroredAnchor(one, kinds, mirror)),
    states: list(house.states, (one) => ({
      ...one,
      openings: swapped(one.openings, mirror),
      missing: one.missing && (one.missing as Entry[]).map((end) => otherSide(end, mirror)),
    })),
  };
}

function mirroredSite(site: Tree, mirror: Mirror): Tree {
  const { downhill } = tree(site.slope);
  if (downhill === undefined || site.front_faces === undefined) return site;
  const [falls, faces] = [downhill, site.front_faces].map((point) =>
    compass.indexOf(String(point)),
  );
  const half = mirror === "front and back" ? 8 : 0;
  const at = (2 * (faces ?? 0) + half - (falls ?? 0) + 32) % 16;
  return { ...site, slope: { ...tree(site.slope), downhill: compass[at] } };
}

/** The mirror image of a house on its site, as its owner would write it. */
export const mirrored = ({ house, site }: Farm, mirror: Mirror): Farm => ({
  house: mirroredHouse(house, mirror),
  site: mirroredSite(site, mirror),
});

/** What a state or a check is called in the mirror image. */
export function mirroredName(name: string, mirror: Mirror): string {
  const [one, other] = pairs[mirror];
  return name.replace(new RegExp(`\\b(${one}|${other})\\b`, "g"), (word) =>
    String(otherSide(word, mirror)),
  );
}
