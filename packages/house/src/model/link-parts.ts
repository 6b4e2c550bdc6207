import type { Tube } from "@hoopstay/section";
import type { boltGrades } from "../schema/fixings.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Assumptions } from "./assumption.ts";
import type { HouseShape } from "./shape.ts";
import { type SteelTube, steelTube, steelTubeAt } from "./steel-tube.ts";

type BoltGrade = (typeof boltGrades)[number];
type Wood = "spruce-pine-fir" | "southern-pine" | "douglas-fir-larch" | "hem-fir";

/** Bolts of one foot, m. */
export interface FootBolts {
  readonly count: number;
  readonly diameter: number;
  readonly grade: BoltGrade | null;
  readonly threadsClear: boolean;
  /** Way the bolt runs; across where unknown, which weakens the hoop most. */
  readonly axis: "along" | "across";
  /** Lowest bolt above the rail's top face, and bolt to bolt. */
  readonly first: number;
  readonly spacing: number;
  readonly edge: number;
  readonly washers: boolean;
}

/** Leg of a fillet weld, m, and strength of its metal, Pa, where known. */
interface FilletWeld {
  readonly leg: number;
  readonly electrode: number | null;
}

export interface Stub extends SteelTube {
  readonly length: number;
  readonly shoulder: number;
  readonly bolts: FootBolts | null;
  readonly weld: FilletWeld | null;
}

/** A place of the hoop weaker than its tube. */
export interface HoopJoint {
  readonly how: "swaged" | "coupled";
  readonly along: number;
  readonly piece: SteelTube | null;
}

export interface SplicePlates {
  /** Plates in all. */
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Along the house; null where unknown. */
  readonly places: readonly number[] | null;
  readonly weld: FilletWeld | null;
  readonly steel: {
    readonly grade: "A36" | null;
    readonly yield: number | null;
    readonly tensile: number | null;
  };
}

export interface CrossMembers extends SteelTube {
  /** Along the house, in rising order. */
  readonly places: readonly number[];
  readonly weld: FilletWeld | null;
}

export interface Bars extends SteelTube {
  readonly count: number;
  readonly length: number;
}

/** A bar on the right-hand side by its ends, m from the middle of the house and the ground. */
export interface PlacedBars extends Bars {
  readonly from: { readonly x: number; readonly z: number } | null;
  readonly to: { readonly x: number; readonly z: number } | null;
}

interface Ties extends SteelTube {
  readonly count: number;
  readonly height: number;
}

export interface Purlins extends SteelTube {
  /** Lines of purlin besides the ridge. */
  readonly lines: number;
  readonly slip: number | null;
  readonly underCover: boolean;
}

export interface Board {
  readonly thickness: number;
  readonly width: number;
  readonly wood: Wood;
  readonly height: number;
  readonly fixing: number | null;
}

export interface Studs {
  readonly thickness: number;
  readonly width: number;
  readonly spacing: number;
  readonly wood: Wood;
  readonly fixing: number | null;
}

/** Clear width and height of a door, m. */
export interface Door {
  readonly width: number;
  readonly height: number;
}

interface LockChannel {
  readonly allowable: number | null;
  readonly screwSpacing: number | null;
  readonly screwAllowable: number | null;
}

/** Everything the load path runs through, from the cover's edge to the rail. SI. */
export interface LinkParts {
  readonly hoop: SteelTube;
  readonly rail: SteelTube;
  readonly joints: readonly HoopJoint[];
  readonly stub: Stub;
  readonly splices: SplicePlates | null;
  readonly crossMembers: CrossMembers | null;
  readonly cornerBraces: Bars | null;
  readonly ties: Ties | null;
  readonly trussBars: PlacedBars | null;
  readonly kneeBraces: PlacedBars | null;
  readonly ridge: Purlins | null;
  readonly purlins: Purlins | null;
  readonly endBraces: (Bars & { readonly height: number }) | null;
  readonly baseBoards: Board | null;
  readonly hipBoards: Board | null;
  readonly studs: Readonly<Record<"front" | "back", Studs | null>>;
  readonly doors: Readonly<Record<"front" | "back", readonly Door[]>>;
  readonly channel: LockChannel | null;
}

/** A rail, and how far it bears before and behind the middle of the house, m. */
interface BearingRail {
  readonly front: number;
  readonly back: number;
  readonly depth: number;
  readonly tube: Tube;
}

export interface LinkSizes {
  readonly shape: HouseShape;
  readonly rail: BearingRail;
  readonly hoopTube: Tube;
}

/** The load path's parts of a house file whose tubes have been read without complaint. */
export function linkParts(input: HouseInput, sizes: LinkSizes, assumed: Assumptions): LinkParts {
  const { hoopTube, rail, shape } = sizes;
  const bars = (given: { tube: HouseInput["hoops"]["tube"]; count: number } | undefined) => {
    const tube = steelTubeAt(given?.tube);
    return given && tube ? { ...tube, count: given.count } : null;
  };
  const { ridge, purlins, collar_ties: ties, corner_braces: corners, end_braces: ends } = input;
  const ridgeTube = steelTubeAt(ridge?.tube);
  const purlinTube = bars(purlins);
  const tieTube = bars(ties);
  const cornerTube = bars(corners);
  const endTube = bars(ends);
  return {
    hoop: steelTube(input.hoops.tube, hoopTube),
    rail: steelTube(input.rails.tube, rail.tube),
    joints: (input.hoops.joints ?? []).map(({ how, along, tube }) => ({
      how,
      along: along.value,
      piece: steelTubeAt(tube),
    })),
    stub: stubOf(input, shape, assumed),
    splices: splicesOf(input),
    crossMembers: crossMembersOf(input, rail, assumed),
    cornerBraces: cornerTube && corners ? { ...cornerTube, length: corners.length.value } : null,
    ties: tieTube && ties ? { ...tieTube, height: ties.height.value } : null,
    trussBars: placedBars(input.truss_bars),
    kneeBraces: placedBars(input.knee_braces),
    ridge: ridgeTube && {
      ...ridgeTube,
      lines: 0,
      slip: ridge?.clamps?.slip.value ?? null,
      underCover: true,
    },
    purlins:
      purlinTube && purlins
        ? {
            tube: purlinTube.tube,
            steel: purlinTube.steel,
            lines: purlins.count,
            slip: purlins.clamps?.slip.value ?? null,
            underCover: purlins.under_cover ?? true,
          }
        : null,
    endBraces:
      endTube && ends ? { ...endTube, length: ends.length.value, height: ends.height.value } : null,
    baseBoards: boardOf(input.base_boards, rail.depth + (input.base_boards?.width.value ?? 0) / 2),
    hipBoards: boardOf(input.hip_boards, input.hip_boards?.height.value ?? 0),
    studs: { front: studsOf(input, "front"), back: studsOf(input, "back") },
    doors: { front: doorsOf(input, "front"), back: doorsOf(input, "back") },
    channel: channelOf(input),
  };
}

const weldOf = (
  given: { leg: { value: number }; electrode?: { value: number } | undefined } | undefined,
): FilletWeld | null =>
  given ? { leg: given.leg.value, electrode: given.electrode?.value ?? null } : null;

function stubOf(input: HouseInput, shape: HouseShape, assumed: Assumptions): Stub {
  const { stubs } = input;
  const length = stubs.length.value;
  const tube = steelTubeAt(stubs.tube);
  if (!tube) throw new Error("the stub's tube was not read");
  const { bolts } = stubs;
  if (!bolts) {
    return { ...tube, length, shoulder: shape.shoulder, bolts: null, weld: weldOf(stubs.weld) };
  }
  const diameter = bolts.diameter.value;
  const even = length / (bolts.count + 1);
  const key = "stubs.bolts";
  const why = "bolts spread evenly over the stub; look and enter it";
  const first = assumed.take(bolts.first?.value, even, `${key}.first`, "spread evenly", why);
  const spacing =
    bolts.count > 1
      ? assumed.take(bolts.spacing?.value, even, `${key}.spacing`, "spread evenly", why)
      : 0;
  return {
    ...tube,
    length,
    shoulder: shape.shoulder,
    weld: weldOf(stubs.weld),
    bolts: {
      count: bolts.count,
      diameter,
      grade: bolts.grade ?? null,
      threadsClear: assumed.take(
        bolts.threads && bolts.threads === "clear",
        false,
        `${key}.threads`,
        "in the plane",
        "safe side: a thread where hoop and stub meet weakens the bolt",
      ),
      axis: assumed.take(
        bolts.axis,
        "across",
        `${key}.axis`,
        "across",
        "safe side: the holes then lie where the hoop bends most",
      ),
      first,
      spacing,
      edge: assumed.take(
        bolts.edge?.value,
        1.5 * diameter,
        `${key}.edge`,
        "1.5 bolt diameters",
        "common practice, no source; measure it",
      ),
      washers: assumed.take(bolts.washers, false, `${key}.washers`, "none", "safe side"),
    },
  };
}

function splicesOf(input: HouseInput): SplicePlates | null {
  const given = input.rails.splices;
  if (!given) return null;
  return {
    count: given.count,
    length: given.length.value,
    width: given.width.value,
    thickness: given.thickness.value,
    places: given.at?.map(({ value }) => value) ?? null,
    weld: weldOf(given.weld),
    steel: {
      grade: given.grade ?? null,
      yield: given.yield?.value ?? null,
      tensile: given.tensile?.value ?? null,
    },
  };
}

function crossMembersOf(
  { cross_members: given }: HouseInput,
  rail: BearingRail,
  assumed: Assumptions,
): CrossMembers | null {
  const tube = steelTubeAt(given?.tube);
  if (!given || !tube) return null;
  const { count } = given;
  const length = rail.front + rail.back;
  const even = Array.from({ length: count }, (_, index) =>
    count === 1 ? 0 : -rail.back + (index * length) / (count - 1),
  );
  const places = assumed.take(
    given.at?.map(({ value }) => value),
    even,
    "cross_members.at",
    "evenly from one rail end to the other",
    "measure where they are: hoops between them bend the rails",
  );
  return { ...tube, places: places.toSorted((a, b) => a - b), weld: weldOf(given.weld) };
}

type PlacedInput = HouseInput["knee_braces"];

function placedBars(given: PlacedInput): PlacedBars | null {
  const tube = steelTubeAt(given?.tube);
  if (!given || !tube) return null;
  const end = (place: NonNullable<PlacedInput>["from"]) =>
    place?.across && place.up ? { x: Math.abs(place.across.value), z: place.up.value } : null;
  return {
    ...tube,
    count: given.count,
    length: given.length.value,
    from: end(given.from),
    to: end(given.to),
  };
}

function boardOf(given: HouseInput["base_boards"], height: number): Board | null {
  if (!given) return null;
  return {
    thickness: given.thickness.value,
    width: given.width.value,
    wood: given.wood ?? "spruce-pine-fir",
    height,
    fixing: given.fixing?.allowable.value ?? null,
  };
}

function studsOf(input: HouseInput, end: "front" | "back"): Studs | null {
  const given = input.end_walls?.[end]?.studs;
  if (!given) return null;
  return {
    thickness: given.thickness.value,
    width: given.width.value,
    spacing: given.spacing.value,
    wood: given.wood ?? "spruce-pine-fir",
    fixing: given.fixing?.allowable.value ?? null,
  };
}

const doorsOf = (input: HouseInput, end: "front" | "back"): Door[] =>
  (input.end_walls?.[end]?.doors ?? []).map(({ width, height }) => ({
    width: width.value,
    height: height.value,
  }));

function channelOf({ film }: HouseInput): LockChannel | null {
  const given = film?.channel;
  if (!given) return null;
  return {
    allowable: given.allowable?.value ?? null,
    screwSpacing: given.screw_spacing?.value ?? null,
    screwAllowable: given.screw_allowable?.value ?? null,
  };
}
