import { countedWater } from "@hoopstay/ground";
import type { Path, PathComplaint } from "../read/complaints.ts";
import { nearest } from "../read/nearest.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { AnchorKind } from "./anchor-kind.ts";
import type { Assumptions } from "./assumption.ts";
import type { Ballast, FittedAnchor } from "./house-model.ts";

const sideSign = { left: -1, right: 1, middle: 0 } as const;

/** Anchors as fitted: place on the rail line, allowable pull, and the tether's direction. */
export function anchorsOf(
  input: HouseInput,
  span: number,
  kinds: readonly AnchorKind[],
  assumed: Assumptions,
  complaints: PathComplaint[],
): FittedAnchor[] {
  return (input.anchors ?? []).map((anchor, index): FittedAnchor => {
    const name = anchor.name ?? `anchor ${index + 1}`;
    const kind = kindOf(anchor, index, kinds, input, complaints);
    const angle = assumed.take(
      anchor.angle?.value ?? kind?.angle,
      Math.PI / 2,
      `anchors.${index}.angle`,
      "90 deg, straight down",
      `tether of ${name} taken as upright: it holds down but not sideways`,
    );
    const path = ["anchors", index, "angle"];
    if (!(angle > 0 && angle <= Math.PI / 2 + 1e-12)) {
      complaints.push({
        path,
        code: "out-of-range",
        given: anchor.angle?.text ?? "",
        expected: "an angle above the ground from just above 0 to 90 deg",
        mend: "Measure the tether's angle from the ground up.",
      });
    }
    const slanted = angle < Math.PI / 2 - 1e-9;
    const lead = anchor.toward ?? (anchor.angle ? undefined : kind?.lead);
    if (slanted && !lead) {
      complaints.push({
        path: ["anchors", index, "toward"],
        code: "key-missing",
        expected: "toward: out, in, front or back",
        mend: `The tether of ${name} is slanted: say where it leads to, seen from the rail.`,
      });
    }
    const x = sideSign[anchor.side];
    const out = x === 0 ? 1 : x;
    const level = slanted ? Math.cos(angle) : 0;
    const heading = {
      out: [out, 0],
      in: [-out, 0],
      front: [0, 1],
      back: [0, -1],
    }[lead ?? "out"] as [number, number];
    return {
      name,
      side: anchor.side,
      x: (x * span) / 2,
      y: anchor.along.value,
      // Where the ground has to tell, nothing is counted until it has.
      pull: anchor.pull?.value ?? 0,
      kind: anchor.pull ? null : (kind?.id ?? null),
      toward: [level * heading[0], level * heading[1], slanted ? -Math.sin(angle) : -1],
    };
  });
}

/** The kind an anchor names; it must be listed, or its pull must be given. */
function kindOf(
  { kind: id, pull }: NonNullable<HouseInput["anchors"]>[number],
  index: number,
  kinds: readonly AnchorKind[],
  input: HouseInput,
  complaints: PathComplaint[],
): AnchorKind | undefined {
  const known = (input.anchor_kinds ?? []).map((kind) => kind.id);
  if (id !== undefined && pull) {
    complaints.push({
      path: ["anchors", index, "kind"],
      code: "sizes-disagree",
      given: `kind ${id}, beside pull ${pull.text}`,
      expected: "either the pull that is known, or the kind that the ground rates",
      mend: "Take one of the two out.",
    });
  }
  if (id === undefined) {
    if (pull) return undefined;
    complaints.push({
      path: ["anchors", index, "pull"],
      code: "key-missing",
      expected: "pull (its allowable pull), or kind (an id of anchor_kinds)",
      mend: "With a kind, the ground of the site file tells what it holds.",
    });
    return undefined;
  }
  if (!known.includes(id)) {
    const near = nearest(id, known);
    complaints.push({
      path: ["anchors", index, "kind"],
      code: "wrong-kind",
      given: id,
      expected: known.length > 0 ? `one of: ${known.join(", ")}` : "an id of anchor_kinds",
      mend: near ? `Did you mean "${near}"?` : "List the kind under anchor_kinds.",
    });
  }
  return kinds.find((kind) => kind.id === id);
}

type Water = NonNullable<NonNullable<HouseInput["ballast"]>[number]["water"]>;

/** A weight as entered, or what counts of a water container: nothing if it could be gone. */
function ballastWeight(
  weight: number | undefined,
  water: Water | undefined,
  path: Path,
  complaints: PathComplaint[],
): number {
  if ((weight === undefined) === (water === undefined)) {
    complaints.push({
      path: [...path, "weight"],
      code: weight === undefined ? "key-missing" : "sizes-disagree",
      expected: "either weight, or water (a container by its fill)",
      mend: "Give the least it can weigh.",
    });
    return 0;
  }
  if (!water) return weight ?? 0;
  return countedWater({
    volume: water.volume.value,
    fill: water.fill.value,
    closed: water.closed,
    levelRecorded: water.level_seen,
    floodOrDrain: water.may_flood_or_drain,
  }).weight;
}

/** Ballast as entered. Loose ballast stays in the list and counts nothing. */
export function ballastOf(input: HouseInput, complaints: PathComplaint[]): Ballast[] {
  return (input.ballast ?? []).map(({ what, weight, water, at, fixed }, index) => ({
    what,
    weight: ballastWeight(weight?.value, water, ["ballast", index], complaints),
    fixed,
    x: at.across?.value ?? 0,
    y: at.along?.value ?? 0,
    z: at.up?.value ?? 0,
  }));
}
