import type { Draw } from "./draw.ts";
import type { Entry } from "./entry.ts";

type Tube = { [key: string]: Entry };

const hoopSizes = [
  "Pipe1-1/2STD",
  "Pipe2STD",
  "HSS2.375X0.125",
  "Fence 2 x 11ga BWG",
  "NPS 2 sch 40",
];
const railSizes = ["HSS4X3X3/16", "HSS3X3X3/16", "HSS4X4X1/4", "HSS6X3X1/4", "CFSHS100x100x5.0"];
const barSizes = ["HSS2X2X1/8", "HSS3X2X1/8", "CFSHS60x60x4.0", "Pipe1STD", "L2X2X3/16"];
const tables = ["birmingham", "manufacturers-standard", "galvanized-sheet", "us-standard"];

/** Only tubes told by their dimensions grow with a house; a catalogue or a gauge table does not. */
export interface TubeKinds {
  readonly plainTubes: boolean;
}

const extras = (draw: Draw, round: boolean): Tube => {
  const standard = draw.pick([
    undefined,
    "A500",
    "EN 10219",
    "EN 10210",
    "other",
    ...(round ? ["A53"] : []),
  ]);
  const grade = standard === "A500" ? draw.pick([undefined, "A500 B", "A500 C"]) : undefined;
  const mill = draw.chance(20);
  return {
    standard,
    grade,
    galvanized: draw.pick([undefined, "yes", "no"]),
    yield: mill ? draw.amount([36, 50, "ksi"], [235, 355, "MPa"], 14) : undefined,
    tensile: mill ? draw.amount([58, 70, "ksi"], [400, 490, "MPa"], 9) : undefined,
  };
};

function walled(draw: Draw, { plainTubes }: TubeKinds, least: number, most: number): Tube {
  if (plainTubes || draw.chance(70)) return { wall: draw.small(least, most) };
  return { gauge: draw.whole(12, 17), gauge_table: draw.pick(tables) };
}

export function roundTube(draw: Draw, kinds: TubeKinds, least: number, most: number): Tube {
  if (!kinds.plainTubes && least > 40 && draw.chance(25)) return { size: draw.pick(hoopSizes) };
  return { outside: draw.small(least, most), ...walled(draw, kinds, 2, 4), ...extras(draw, true) };
}

export function railTube(draw: Draw, kinds: TubeKinds): Tube {
  if (!kinds.plainTubes && draw.chance(30)) return { size: draw.pick(railSizes) };
  const wall = { wall: draw.small(3, 6) };
  if (draw.chance(10)) return { outside: draw.small(89, 120), ...wall, ...extras(draw, true) };
  return {
    depth: draw.small(75, 150),
    width: draw.small(75, 110),
    ...wall,
    ...extras(draw, false),
  };
}

export function barTube(draw: Draw, kinds: TubeKinds): Tube {
  const kind = draw.whole(0, 2);
  if (kind === 2 && !kinds.plainTubes) return { size: draw.pick(barSizes) };
  if (kind === 1)
    return { depth: draw.small(40, 75), width: draw.small(30, 60), wall: draw.small(2, 4) };
  return roundTube(draw, kinds, 25, 40);
}
