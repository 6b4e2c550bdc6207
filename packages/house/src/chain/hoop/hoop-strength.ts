import type { RoundTube } from "@hoopstay/section";
import type { CombinationId } from "@hoopstay/stability";
import {
  archBucklingLength,
  eulerLoad,
  type HolePlace,
  type MemberLengths,
  memberSection,
  memberStrengths,
  type NotCovered,
  type Strength,
  type Worksheet,
} from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import type { FootBolts, HoopJoint } from "../../model/link-parts.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import { steelOfTube } from "../steel.ts";
import { holedTube, inHoopPlane } from "./holed-tube.ts";
import type { HoopOutline } from "./hoop-outline.ts";

/** What a section of the hoop can take by one method, N and N m. */
export interface Capacities {
  readonly tension: number;
  readonly compression: number;
  readonly moment: number;
  readonly shear: number;
}
export type ByMethod<Value> = Readonly<Record<CombinationId, Value>>;

/** What the hoop can take: the plain tube, at its bolt holes, at its joints. */
export interface HoopStrength {
  readonly tube: ByMethod<Capacities>;
  readonly holed: ByMethod<Capacities> | null;
  /** By place in the house's list of joints; null where the joint's section is not known. */
  readonly joints: readonly (ByMethod<Capacities> | null)[];
  /** Elastic buckling load in the hoop's plane and out of it, N. */
  readonly euler: number;
  readonly eulerAcross: number;
  readonly findings: readonly string[];
}

/** Effective lengths of the hoop as an arch, m. */
interface HoopLengths {
  readonly inPlane: number;
  readonly outOfPlane: number;
}

/**
 * In its plane the two-hinged arch, legs counted as arc; where nothing ties the rails a foot may
 * spread and each half stands by itself. Out of it the longest stretch that nothing holds.
 */
function hoopLengths(
  { links }: House,
  { arch, leg, halfAngle, unbraced }: HoopOutline,
): HoopLengths {
  const whole = arch + 2 * leg;
  const inPlane = links.crossMembers === null ? whole : archBucklingLength(whole, halfAngle);
  return { inPlane, outOfPlane: unbraced };
}

/** The end drawn in to fit inside the tube, where the joint's own section is not told. */
function swagedEnd({ tube, steel }: SteelTube): SteelTube | null {
  if (tube.kind !== "round") return null;
  const end: RoundTube = { ...tube, outside: tube.outside - 2 * tube.wall };
  return { tube: end, steel };
}

const capacity = (strength: Strength | NotCovered, method: CombinationId): number =>
  strength.covered ? strength[method] : 0;

const lengthsOf = ({ inPlane, outOfPlane }: HoopLengths): MemberLengths => ({
  bucklingX: inPlane,
  bucklingY: outOfPlane,
  lateral: outOfPlane,
  shear: inPlane,
  torsion: outOfPlane,
});

type PlaceOfHoles = (bolts: FootBolts) => HolePlace;

/**
 * @param place where bolt holes lie in the bending that is looked at
 * @returns the strengths, or the reason why the standard does not cover this tube
 */
export function hoopStrength(
  house: House,
  outline: HoopOutline,
  worker?: Worksheet,
  place: PlaceOfHoles = inHoopPlane,
): HoopStrength | NotCovered {
  const { hoop, joints } = house.links;
  const steel = steelOfTube(hoop);
  const section = memberSection(hoop.tube);
  const lengths = hoopLengths(house, outline);
  const plain = memberStrengths(section, steel, lengthsOf(lengths), null, worker);
  const uncovered = [plain.tension, plain.compression, plain.momentX, plain.shearX].find(
    (one): one is NotCovered => !one.covered,
  );
  if (uncovered) return uncovered;
  const both = <Value>(make: (method: CombinationId) => Value): ByMethod<Value> => ({
    ASD: make("ASD"),
    LRFD: make("LRFD"),
  });
  const tube = both(
    (method): Capacities => ({
      tension: capacity(plain.tension, method),
      compression: capacity(plain.compression, method),
      moment: capacity(plain.momentX, method),
      shear: capacity(plain.shearX, method),
    }),
  );
  const holed = holedCapacities(house.links, place, tube, worker);
  if (holed && "covered" in holed) return holed;
  return {
    tube,
    holed,
    joints: joints.map((joint) => jointCapacities(joint, hoop, lengths, tube)),
    euler: eulerLoad.evaluate(steel.modulus, section.secondMomentX, lengths.inPlane),
    eulerAcross: eulerLoad.evaluate(steel.modulus, section.secondMomentX, lengths.outOfPlane),
    findings: plain.findings,
  };
}

/** The tube at a bolt's holes, or null where no bolt is told. */
function holedCapacities(
  { hoop, stub }: House["links"],
  place: PlaceOfHoles,
  tube: ByMethod<Capacities>,
  worker?: Worksheet,
): ByMethod<Capacities> | NotCovered | null {
  const found = holedTube(hoop, stub.bolts, place, worker);
  if (!found || "covered" in found) return found;
  const { moment, tension } = found;
  const at = (method: CombinationId): Capacities => ({
    ...tube[method],
    tension: Math.min(tube[method].tension, tension[method]),
    moment: moment[method],
  });
  return { ASD: at("ASD"), LRFD: at("LRFD") };
}

/**
 * A joint in the tube: never more than the tube itself. The drawn-in end alone carries a swaged
 * joint; a sleeve carries what its own section does.
 */
function jointCapacities(
  { how, piece }: HoopJoint,
  hoop: SteelTube,
  lengths: HoopLengths,
  tube: ByMethod<Capacities>,
): ByMethod<Capacities> | null {
  const weak = piece ?? (how === "swaged" ? swagedEnd(hoop) : null);
  if (!weak) return null;
  const own = memberStrengths(memberSection(weak.tube), steelOfTube(weak), lengthsOf(lengths));
  const at = (method: CombinationId): Capacities => ({
    tension: Math.min(tube[method].tension, capacity(own.tension, method)),
    compression: Math.min(tube[method].compression, capacity(own.compression, method)),
    moment: Math.min(tube[method].moment, capacity(own.momentX, method)),
    shear: Math.min(tube[method].shear, capacity(own.shearX, method)),
  });
  return { ASD: at("ASD"), LRFD: at("LRFD") };
}
