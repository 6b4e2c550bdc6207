import { power } from "@hoopstay/core";
import type { Link, LinkId, Shaft, Stabiliser } from "@hoopstay/ground";
import type { Path, PathComplaint } from "../read/complaints.ts";
import type { AnchorKindInput } from "../schema/anchor-kind.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { AnchorKind } from "./anchor-kind.ts";
import type { Assumptions } from "./assumption.ts";
import { commonKinds } from "./common-kinds.ts";

type Needed = "plates" | "shaft" | "plate_area" | "depth" | "set" | "body" | "face" | "length";

const needed: Readonly<Record<AnchorKindInput["form"], readonly (Needed | "weight" | "width")[]>> =
  {
    screw: ["plates", "shaft"],
    "driven plate": ["plate_area", "depth"],
    stake: ["shaft", "depth"],
    "picket set": ["set"],
    deadman: ["body", "face", "length", "depth"],
    block: ["weight", "width"],
  };

/** Anchor kinds of a house file that has passed its schema. */
export function anchorKindsOf(
  input: HouseInput,
  assumed: Assumptions,
  complaints: PathComplaint[],
): AnchorKind[] {
  if (!input.anchor_kinds) {
    const used = commonKinds.map(({ words }) => words).join("; ");
    const why = "none listed: common kinds are looked at for the count; none is taken as fitted";
    assumed.list.push({ key: "anchor_kinds", used, why });
    return [...commonKinds];
  }
  const ids = input.anchor_kinds.map(({ id }) => id);
  return input.anchor_kinds.flatMap((kind, index) => {
    const path = ["anchor_kinds", index];
    if (ids.indexOf(kind.id) < index) {
      const expected = "an id of its own for every kind";
      complaints.push({
        path: [...path, "id"],
        code: "sizes-disagree",
        given: kind.id,
        expected,
        mend: "Rename it.",
      });
    }
    const missing = needed[kind.form].filter((key) => kind[key] === undefined);
    for (const key of missing) {
      complaints.push({
        path: [...path, key],
        code: "key-missing",
        expected: `the key "${key}" of a ${kind.form}`,
        mend: `Add "${key}" to anchor kind ${kind.id}.`,
      });
    }
    if (kind.shaft?.wall && 2 * kind.shaft.wall.value >= kind.shaft.diameter.value) {
      complaints.push({
        path: [...path, "shaft", "wall"],
        code: "sizes-disagree",
        given: `${kind.shaft.wall.text}, in a shaft of ${kind.shaft.diameter.text}`,
        expected: "a wall of less than half the diameter",
        mend: "Leave wall out for a solid rod.",
      });
    }
    if (kind.tie_setback && kind.width && kind.tie_setback.value > kind.width.value) {
      complaints.push({
        path: [...path, "tie_setback"],
        code: "sizes-disagree",
        given: `${kind.tie_setback.text}, on a block ${kind.width.text} wide`,
        expected: "a tie on the block: behind its near face by no more than its width",
        mend: "Measure from the face toward the house.",
      });
    }
    const found = kindOf(kind, path, assumed, complaints);
    return missing.length > 0 ? [] : [found];
  });
}

function kindOf(
  kind: AnchorKindInput,
  path: Path,
  assumed: Assumptions,
  complaints: PathComplaint[],
): AnchorKind {
  const key = path.join(".");
  const angle = assumed.take(
    kind.angle?.value,
    Math.PI / 2,
    `${key}.angle`,
    "90 deg, straight down",
    `tether of ${kind.id} taken as upright: it holds down but not sideways`,
  );
  refuseAngle(angle, kind, path, complaints);
  const upright =
    kind.form === "screw" || kind.form === "stake"
      ? assumed.take(
          kind.stands,
          "upright",
          `${key}.stands`,
          "upright",
          "safe side: a slanted pull on an upright shaft holds less than one in line with it",
        ) === "upright"
      : false;
  return {
    id: kind.id,
    words: kind.words ?? kind.form,
    body: bodyOf(kind, key, assumed),
    upright,
    direct: kind.direct ?? false,
    links: linksOf(kind, path, complaints),
    angle,
    lead: kind.toward ?? "out",
    knownScatter: kind.known_scatter?.value ?? null,
    breadth: breadthOf(kind),
  };
}

function refuseAngle(
  angle: number,
  kind: AnchorKindInput,
  path: Path,
  complaints: PathComplaint[],
): void {
  if (!(angle > 0 && angle <= Math.PI / 2 + 1e-12)) {
    complaints.push({
      path: [...path, "angle"],
      code: "out-of-range",
      given: kind.angle?.text ?? "",
      expected: "an angle above the ground from just above 0 to 90 deg",
      mend: "Measure the tether's angle from the ground up.",
    });
  }
  if (angle < Math.PI / 2 - 1e-9 && !kind.toward) {
    complaints.push({
      path: [...path, "toward"],
      code: "key-missing",
      expected: "toward: out, in, front or back",
      mend: `The tether of ${kind.id} is slanted: say where it leads to, seen from the rail.`,
    });
  }
}

function linksOf(
  kind: AnchorKindInput,
  path: Path,
  complaints: PathComplaint[],
): AnchorKind["links"] {
  const links: Partial<Record<LinkId, Link>> = {};
  for (const id of ["tether", "eye", "attachment"] as const) {
    const given = kind[id];
    if (!given) continue;
    if (!given.working_load) {
      complaints.push({
        path: [...path, id, "working_load"],
        code: "key-missing",
        ...(given.breaking_load ? { given: `breaking load ${given.breaking_load.text}` } : {}),
        expected: "the working load limit; a breaking load is never used",
        mend: "Read the working load limit (WLL) on the tag, or use a rated part.",
      });
      continue;
    }
    links[id] = { workingLoadLimit: given.working_load.value };
  }
  return links;
}

function shaftOf(kind: AnchorKindInput, key: string, assumed: Assumptions): Shaft {
  const diameter = kind.shaft?.diameter.value ?? 0;
  const inside = kind.shaft?.wall ? diameter - 2 * kind.shaft.wall.value : 0;
  const yieldStress = kind.shaft?.yield?.value;
  return {
    diameter,
    plasticModulus: (power(diameter, 3) - power(inside, 3)) / 6,
    ...(yieldStress === undefined ? {} : { yieldStress }),
    pullHeight: assumed.take(
      kind.shaft?.pull_height?.value,
      0.05,
      `${key}.shaft.pull_height`,
      "50 mm",
      "judgement: a tether at the head of a shaft that is set flush",
    ),
  };
}

const stabiliserOf = ({ stabiliser }: AnchorKindInput): { stabiliser?: Stabiliser } =>
  stabiliser
    ? {
        stabiliser: {
          breadth: stabiliser.width.value,
          top: stabiliser.top.value,
          height: stabiliser.height.value,
        },
      }
    : {};

function bodyOf(kind: AnchorKindInput, key: string, assumed: Assumptions): AnchorKind["body"] {
  const depth = kind.depth?.value ?? 0;
  switch (kind.form) {
    case "screw": {
      const helices = (kind.plates ?? []).map((plate) => ({
        diameter: plate.diameter.value,
        depth: plate.depth.value,
      }));
      return { kind: "screw", helices, shaft: shaftOf(kind, key, assumed), ...stabiliserOf(kind) };
    }
    case "driven plate":
      return { kind: "driven plate", area: kind.plate_area?.value ?? 0, depth };
    case "stake":
      return { kind: "stake", shaft: shaftOf(kind, key, assumed), depth };
    case "picket set":
      return { kind: "picket set", set: kind.set ?? "1" };
    case "deadman": {
      const [face, length] = [kind.face?.value ?? 0, kind.length?.value ?? 0];
      return { kind: "deadman", body: kind.body ?? "log", face, length, depth };
    }
    case "block": {
      const width = kind.width?.value ?? 0;
      const take = (given: number | undefined, name: string, value: number, used: string) =>
        assumed.take(given, value, `${key}.${name}`, used, "safe side: the block turns sooner");
      const block = {
        weight: kind.weight?.value ?? 0,
        width,
        tieHeight: take(kind.tie_height?.value, "tie_height", width, "as high as it is wide"),
        tieSetback: take(kind.tie_setback?.value, "tie_setback", 0, "at the near face"),
      };
      return { kind: "block", block };
    }
  }
}

function breadthOf({ form, plates, plate_area: area }: AnchorKindInput): number | null {
  if (form === "screw") return Math.max(...(plates ?? []).map(({ diameter }) => diameter.value));
  return form === "driven plate" && area ? Math.sqrt(area.value) : null;
}
