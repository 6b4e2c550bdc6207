import { type Citation, judged, POUND_PER_SQUARE_FOOT } from "@hoopstay/core";
import {
  type Clue,
  classOfClues,
  classRows,
  type GroundState,
  holdingFriction,
  POUND_PER_CUBIC_FOOT,
  type PullTest,
  type ReadClue,
  type Soil,
  type SoilClass,
  soilClasses,
} from "@hoopstay/ground";
import type { PathComplaint } from "../read/complaints.ts";
import type { GroundInput } from "../schema/ground.ts";
import type { SiteInput } from "../schema/site-schema.ts";
import type { Assumptions } from "./assumption.ts";

/** A pull test with the angle it was made at, rad, where that was written down. */
export interface LoggedPull extends PullTest {
  readonly angle: number | null;
}

/** The ground of a site in SI. */
export interface SiteGround {
  readonly friction: number;
  readonly frictionCitation: Citation;
  readonly bearing: number;
  readonly bearingCitation: Citation;
  readonly soil: Soil;
  readonly soilClass: SoilClass | null;
  readonly clues: readonly ReadClue[];
  /** Whose values, where an engineer gave them. */
  readonly engineer: string | null;
  readonly wet: boolean;
  readonly frostDepth: number | null;
  readonly pulls: readonly LoggedPull[];
  readonly everyAnchorProved: boolean;
  readonly servicesLocated: boolean | null;
}

export function siteGroundOf(
  input: SiteInput,
  assumed: Assumptions,
  complaints: PathComplaint[],
): SiteGround {
  const { ground } = input;
  const { soilClass, clues } = classOf(ground);
  const frozen = ground?.frozen ?? false;
  const wet = assumed.take(ground?.wet, true, "ground.wet", "wet", "safe side") || frozen;
  const bearing = bearingOf(ground, soilClass, assumed, complaints);
  const friction = frictionOf(ground, wet, frozen, assumed);
  return {
    friction: friction.value,
    frictionCitation: friction.citation,
    bearing: bearing.value,
    bearingCitation: bearing.citation,
    soil: soilOf(ground, soilClass, wet, assumed, complaints),
    soilClass,
    clues,
    engineer: ground?.engineer?.by ?? null,
    wet,
    frostDepth: ground?.frost_depth?.value ?? null,
    pulls: pullsOf(input),
    everyAnchorProved: input.every_anchor_proved ?? false,
    servicesLocated: input.services_located ?? null,
  };
}

/** The lowest class that the file names or its clues give. */
function classOf(ground: GroundInput | undefined) {
  const clues: Clue[] = [];
  if (ground?.probe) clues.push({ kind: "probe torque", torque: ground.probe.value });
  if (ground?.blow_count !== undefined) {
    clues.push({ kind: "blow count", blows: ground.blow_count });
  }
  for (const feel of ground?.feel ?? []) clues.push({ kind: "feel", feel });
  const told = classOfClues(clues);
  const named = [told.soilClass, ground?.soil_class ?? null].filter((one) => one !== null);
  const rank = (one: SoilClass): number => soilClasses.indexOf(one);
  const soilClass = named.reduce<SoilClass | null>(
    (worst, one) => (worst === null || rank(one) > rank(worst) ? one : worst),
    null,
  );
  return { soilClass, clues: told.clues };
}

function bearingOf(
  ground: GroundInput | undefined,
  soilClass: SoilClass | null,
  assumed: Assumptions,
  complaints: PathComplaint[],
): { value: number; citation: Citation } {
  if (ground?.bearing) {
    return { value: ground.bearing.value, citation: judged("as entered in the site file") };
  }
  if (soilClass === "5") {
    complaints.push({
      path: ["ground", ground?.soil_class === "5" ? "soil_class" : "bearing"],
      code: "soil-without-bearing",
      given:
        ground?.soil_class === "5" ? "class 5" : "class 5, by what was felt, probed or counted",
      expected: "an allowable bearing pressure: class 5 ground has no published one",
      mend: "Peat, organic clay and fresh fill need an engineer's value: ground.bearing.",
    });
  }
  const row = classRows.find((one) => one.soilClass === soilClass);
  if (row && row.bearing !== null) {
    return { value: row.bearing * POUND_PER_SQUARE_FOOT, citation: row.citation };
  }
  assumed.list.push({
    key: "ground.bearing",
    used: "1000 psf",
    why: "judgement; the lowest class with a published value (24 CFR 3285.202)",
  });
  return {
    value: 1000 * POUND_PER_SQUARE_FOOT,
    citation: judged("soil class unknown: 1000 psf, as class 4"),
  };
}

function frictionOf(
  ground: GroundInput | undefined,
  wet: boolean,
  frozen: boolean,
  assumed: Assumptions,
): { value: number; citation: Citation } {
  if (ground?.friction) {
    const { low, reason } = ground.friction;
    return { value: low.value, citation: judged(`entered in the site file: ${reason}`) };
  }
  const kind = assumed.take(
    ground?.kind,
    "unknown",
    "ground.kind",
    "unknown",
    "low friction 0.15 is used; judgement, safe side",
  );
  // Frozen ground may be ice: no friction is counted on it.
  const { friction, citation } = holdingFriction(frozen ? "ice" : kind, wet);
  return { value: friction, citation };
}

function soilOf(
  ground: GroundInput | undefined,
  soilClass: SoilClass | null,
  wet: boolean,
  assumed: Assumptions,
  complaints: PathComplaint[],
): Soil {
  const state: GroundState = {
    wetness: ground?.frozen ? "frozen" : wet ? "wet" : "dry",
    ...(ground?.water_table ? { waterTable: ground.water_table.value } : {}),
  };
  const told = (): "wet" | "dry" =>
    assumed.take(
      ground?.told_when,
      "dry",
      "ground.told_when",
      "dry",
      "safe side: clay felt dry is weaker when it is wet",
    );
  const given = ground?.engineer;
  if (given) {
    const { friction_angle: phi, shear_strength: strength, unit_weight: weight } = given;
    if ((phi === undefined) === (strength === undefined)) {
      complaints.push({
        path: ["ground", "engineer"],
        code: phi ? "sizes-disagree" : "key-missing",
        expected: "either friction_angle (sand-like) or shear_strength (clay-like)",
        mend: "Take the one the engineer gave; the ground is rated as one or the other.",
      });
    }
    const unitWeight = weight.value;
    complaints.push(...outsideTheory(given));
    if (phi) {
      const values = { likeness: "sand", frictionAngle: phi.value, unitWeight } as const;
      return { basis: "theory", values, state };
    }
    const shearStrength = strength?.value ?? 0;
    const values = { likeness: "clay", shearStrength, unitWeight, measured: told() } as const;
    return { basis: "theory", values, state };
  }
  const likeness = ground?.like ?? likenessOf(ground);
  const measured = soilClass === null ? "dry" : told();
  return { basis: "presumptive", soilClass, likeness, measured, state };
}

/** Values for which no published theory or table stands. */
function outsideTheory(given: NonNullable<GroundInput["engineer"]>): PathComplaint[] {
  const { friction_angle: phi, unit_weight: weight } = given;
  const mend = "Have the anchor tested instead: pull_tests.";
  const outside = (key: string, text: string, expected: string): PathComplaint => ({
    path: ["ground", "engineer", key],
    code: "ground-outside",
    given: text,
    expected,
    mend,
  });
  const found: PathComplaint[] = [];
  const degrees = ((phi?.value ?? Math.PI / 6) * 180) / Math.PI;
  if (phi && !(degrees > 20 - 1e-9 && degrees < 45 + 1e-9)) {
    found.push(outside("friction_angle", phi.text, "an angle from 20 to 45 deg"));
  }
  const pounds = weight.value / POUND_PER_CUBIC_FOOT;
  if (!(pounds > 70 - 1e-9 && pounds < 150 + 1e-9)) {
    found.push(outside("unit_weight", weight.text, "a unit weight from 70 to 150 pcf"));
  }
  return found;
}

function likenessOf(ground: GroundInput | undefined): "sand" | "clay" | "unknown" {
  if (ground?.kind === "clay") return "clay";
  return ground?.kind === "sand" || ground?.kind === "gravel" ? "sand" : "unknown";
}

function pullsOf(input: SiteInput): LoggedPull[] {
  return (input.pull_tests ?? []).map((test): LoggedPull => {
    const { moved_up: up, moved_sideways: sideways } = test;
    return {
      place: test.place ?? input.site,
      date: test.date,
      anchorKind: test.anchor,
      pull: test.pull.value,
      ended: test.ended,
      movement: {
        ...(up ? { up: up.value } : {}),
        ...(sideways ? { sideways: sideways.value } : {}),
      },
      ground: test.ground ?? "unknown",
      repeats: test.repeats ?? 0,
      angle: test.angle?.value ?? null,
    };
  });
}
