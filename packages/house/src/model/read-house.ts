import { shellOf } from "@hoopstay/load";
import type { Tube } from "@hoopstay/section";
import type { PathComplaint } from "../read/complaints.ts";
import { houseDoubts } from "../read/doubts.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import { anchorKindsOf } from "./anchor-kinds.ts";
import { anchorsOf, ballastOf } from "./anchors.ts";
import { Assumptions } from "./assumption.ts";
import { endWallParts, envelopeParts } from "./envelope-parts.ts";
import { fillingsOf, fittingParts, obstaclesOf } from "./fittings.ts";
import { frameParts } from "./frame-parts.ts";
import type { House, Opening, Rail, Tractor } from "./house-model.ts";
import { linkParts } from "./link-parts.ts";
import { shapeOf } from "./shape.ts";
import { tubeModel } from "./tube-model.ts";

const widthOf = (tube: Tube): number =>
  tube.kind === "rectangular" ? tube.width : diameterOf(tube);
const depthOf = (tube: Tube): number =>
  tube.kind === "rectangular" ? tube.depth : diameterOf(tube);
const diameterOf = (tube: Tube): number => (tube.kind === "round" ? tube.outside : 0);

/**
 * The house of a house file that has passed its schema, in SI, with every assumption listed.
 *
 * @param complaints collects what is wrong across keys; the house is undefined when any was found
 */
export function readHouseModel(input: HouseInput, complaints: PathComplaint[]): House | undefined {
  const assumed = new Assumptions();
  const hoopTube = tubeModel(input.hoops.tube, ["hoops", "tube"], complaints);
  const railTube = tubeModel(input.rails.tube, ["rails", "tube"], complaints);
  if (hoopTube && hoopTube.kind !== "round") {
    complaints.push({
      path: ["hoops", "tube"],
      code: "wrong-kind",
      expected: "a round tube",
      mend: "Hoops are computed as round tube only; give outside and wall, or a round size.",
    });
  }
  if (railTube && railTube.kind !== "rectangular" && railTube.kind !== "round") {
    complaints.push({
      path: ["rails", "tube"],
      code: "wrong-kind",
      expected: "a rectangular, square or round tube",
      mend: "Give depth, width and wall, or a catalogue size.",
    });
  }
  const shape = shapeOf(input, assumed, complaints, railTube ? depthOf(railTube) : 0, hoopTube);
  // Whatever the shape is: complaints about anchors and bins come with all others.
  const anchorKinds = anchorKindsOf(input, assumed, complaints);
  const anchors = anchorsOf(input, input.hoops.span.value, anchorKinds, assumed, complaints);
  const obstacles = obstaclesOf(input, complaints);
  const ballast = ballastOf(input, complaints);
  if (!hoopTube || !railTube || !shape) return undefined;
  const rail = railOf(input, railTube, shape.lines.length, assumed);
  const shell = shellOf(shape.lines);
  const parts = [
    ...frameParts(input, { shape, rail, hoopTube, shell }, assumed, complaints),
    ...envelopeParts(input, { shape, rail, shell }, assumed),
    ...endWallParts(input, { shape, rail, shell }, assumed),
    ...fittingParts(input),
  ];
  const tractor = tractorOf(input, complaints);
  if (complaints.length > 0) return undefined;
  const house: House = {
    name: input.house,
    lines: shape.lines,
    spacing: shape.spacing,
    leg: shape.leg,
    hoopTube,
    rail,
    parts,
    links: linkParts(input, { shape, rail, hoopTube }, assumed),
    obstacles,
    openings: openingsOf(input),
    gapWidth: {
      sides: assumed.take(input.gaps?.sides?.value, 0.025, "gaps.sides", "25 mm", gapReason),
      ends: assumed.take(input.gaps?.ends?.value, 0.025, "gaps.ends", "25 mm", gapReason),
    },
    removableEnds: (["front", "back"] as const).filter((end) =>
      assumed.take(
        input.end_walls?.[end]?.removable,
        true,
        `end_walls.${end}.removable`,
        "yes: a state without this wall is checked",
        "safe side: a wall that can come off or blow out is checked as missing",
      ),
    ),
    filmRemovable: assumed.take(
      input.film?.removable,
      true,
      "film.removable",
      "yes: the bare frame is checked",
      "a state more; it can only lower the answer",
    ),
    givenStates: (input.states ?? []).map(({ id, words, openings, missing }) => ({
      id,
      words,
      openings: {
        left: openings.left?.value ?? 0,
        right: openings.right?.value ?? 0,
        front: openings.front?.value ?? 0,
        back: openings.back?.value ?? 0,
        roof: openings.roof?.value ?? 0,
      },
      missing: missing ?? [],
    })),
    onlyGivenStates: input.only_these_states ?? false,
    anchorKinds,
    anchors,
    tractor,
    fillings: fillingsOf(input),
    ballast,
    measured: measuredOf(input),
    assumptions: assumed.list,
    findings: shape.findings,
    doubts: houseDoubts(input),
  };
  return house;
}

function tractorOf({ tractor }: HouseInput, complaints: PathComplaint[]): Tractor | null {
  if (!tractor) return null;
  const { what, weight, on_driven_wheels: driven } = tractor;
  if (driven.value > weight.value) {
    complaints.push({
      path: ["tractor", "on_driven_wheels"],
      code: "sizes-disagree",
      given: `${driven.text}, of ${weight.text}`,
      expected: "no more weight on the driven wheels than the vehicle weighs",
      mend: "With four-wheel drive both are the same.",
    });
  }
  return { what: what ?? "tractor", weight: weight.value, onDrivenWheels: driven.value };
}

const gapReason = "mean gap unknown; judgement, it only decides the enclosure class";

function railOf(input: HouseInput, tube: Tube, houseLength: number, assumed: Assumptions): Rail {
  const length = assumed.take(
    input.rails.length?.value,
    houseLength,
    "rails.length",
    "as long as the house",
    "safe side: no bearing beyond the first and last hoop",
  );
  return {
    tube,
    depth: depthOf(tube),
    width: widthOf(tube),
    length,
    front: length / 2,
    back: length / 2,
    noseFront: input.rails.noses?.front?.value ?? 0,
    noseBack: input.rails.noses?.back?.value ?? 0,
  };
}

function openingsOf(input: HouseInput): Opening[] {
  const doors = (["front", "back"] as const).flatMap((wall) =>
    (input.end_walls?.[wall]?.doors ?? []).map((door): Opening => {
      const area = door.width.value * door.height.value;
      return { kind: "door", wall, area, always: false };
    }),
  );
  const rolls = (["left", "right"] as const).flatMap((wall): Opening[] => {
    const side = input.roll_up_sides?.[wall];
    if (!side) return [];
    return [{ kind: "roll-up", wall, area: side.length.value * side.height.value, always: false }];
  });
  const vents = (input.vents ?? []).map(
    (vent): Opening => ({
      kind: "vent",
      wall: vent.wall,
      area: vent.area.value,
      always: vent.shuts === false,
    }),
  );
  return [...doors, ...rolls, ...vents];
}

function measuredOf(input: HouseInput): House["measured"] {
  const given = input.measured_weight;
  if (!given) return null;
  const place = given.at;
  return {
    low: given.total.value,
    high: given.high?.value ?? given.total.value,
    at: place
      ? {
          x: place.across?.value ?? 0,
          y: place.along?.value ?? 0,
          z: place.up?.value ?? Number.NaN,
        }
      : null,
  };
}
