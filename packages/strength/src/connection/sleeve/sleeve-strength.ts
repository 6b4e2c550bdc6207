import { type BoltStrength, boltStrength } from "../bolt/bolt-strength.ts";
import { exceeds } from "../common/exceeds.ts";
import {
  type ConnectionNote,
  type ConnectionStrength,
  type NotCovered,
  note,
  strengthOf,
} from "../common/strength.ts";
import { unprinted, type Worksheet } from "../common/worksheet.ts";
import { alikeTogether } from "./alike-together.ts";
import { holeLayout } from "./hole-layout.ts";
import { outsideHoleRules } from "./hole-row.ts";
import { outerTube, requireSleeve, type SleeveJoint, type TubeName } from "./sleeve-joint.ts";
import { tubeNetSection } from "./tube-net-section.ts";
import { thinnestSheet, wallsAtBolt } from "./walls-at-bolt.ts";

/** What a sleeve joint can take in uplift, N, all bolts together; and its parts. */
export interface SleeveStrength extends ConnectionStrength {
  readonly bolt: BoltStrength;
  readonly count: number;
  /** Bolt to bolt, m; null with one bolt. */
  readonly spacing: number | null;
  readonly overlap: number;
  /** One bolt and the walls at it, N. */
  readonly perBolt: ConnectionStrength;
  /** The two tubes in tension, N. */
  readonly tubes: ConnectionStrength;
}

/**
 * Strength of a hoop on its stub, one tube in the other, held by bolts through both: bolt shear, the
 * walls of both tubes in bearing and tear-out, the tubes torn at their holes. Uplift is shared by the
 * bolts equally; every bolt counts as the one with the least clear distance [cautious].
 *
 * Left out, and said in `notChecked`: bending of the bolt in a loose sleeve, ovalling of the tubes,
 * reversing load.
 *
 * @param joint m, Pa
 * @param sheet where the steps go
 * @returns `covered: false` outside the grades, spacings and walls of the rules
 * @throws Refusal `not-positive`, `out-of-range`, `sizes-disagree` for what cannot be
 */
export function sleeveStrength(
  joint: SleeveJoint,
  sheet: Worksheet = unprinted,
): SleeveStrength | NotCovered {
  requireSleeve(joint);
  const outside = outsideRules(joint);
  if (outside) return outside;
  const outer = outerTube(joint);
  const grip = joint[outer].outside;
  const bolt = boltStrength({ ...joint.bolt, grip, planes: 2 }, sheet);
  if (!bolt.covered) return bolt;
  const { hoop, stub, washers, bolt: given, ...row } = joint;
  const { diameter } = given;
  const ends = [
    ["the hoop", hoop.endDistance],
    ["the stub", stub.endDistance],
  ] as const;
  const layout = holeLayout({ ...row, diameter }, ends, sheet);
  const at = (name: TubeName, clear: number) => {
    const walls = { id: name, name: `the ${name}`, wall: joint[name], count: 2, diameter } as const;
    return wallsAtBolt({ ...walls, clear, washers: washers && name === outer }, sheet);
  };
  const perBolt = [bolt.shear, ...at("hoop", layout.clear[0]), ...at("stub", layout.clear[1])];
  const tubes = (["hoop", "stub"] as const).flatMap((name) =>
    tubeNetSection(name, joint[name], layout.hole, sheet),
  );
  const shared = perBolt.map((state) => alikeTogether(state, joint.count, sheet));
  return {
    ...strengthOf([...shared, ...tubes], {
      assumed: [...bolt.assumed, ...layout.assumed],
      findings: [...layout.findings, ...fitFindings(joint)],
      notChecked,
    }),
    bolt,
    count: joint.count,
    spacing: layout.spacing,
    overlap: joint.overlap,
    perBolt: strengthOf(perBolt),
    tubes: strengthOf(tubes),
  };
}

const notChecked: readonly ConnectionNote[] = [
  note("bolt-bending", "bending of the bolt where the sleeve is loose"),
  note("ovalling", "ovalling of the tubes under the bolt and where one presses on the other"),
  note("reversing-load", "holes that widen as the wind's pull reverses"),
];

function fitFindings(joint: SleeveJoint): readonly ConnectionNote[] {
  const outer = joint[outerTube(joint)];
  const inner = outerTube(joint) === "hoop" ? joint.stub : joint.hoop;
  const bore = outer.outside - 2 * outer.wall;
  if (!exceeds(inner.outside, bore)) return [];
  const words = "the inner tube is wider than the bore of the outer one: check both sizes";
  return [note("tube-fit", words, bore, "length")];
}

function outsideRules(joint: SleeveJoint): NotCovered | null {
  const row = outsideHoleRules({ ...joint, diameter: joint.bolt.diameter });
  if (row) return row;
  const thin = (["hoop", "stub"] as const).find((name) => exceeds(thinnestSheet, joint[name].wall));
  if (thin) {
    const reason = `the wall of the ${thin} is thinner than the 0.024 in of the bearing rules`;
    return {
      covered: false,
      id: "thin-wall",
      reason,
      mend: "Use a heavier tube, or test the joint.",
    };
  }
  return null;
}
