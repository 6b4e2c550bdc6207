import { type Citation, cite, judged, POUND_PER_SQUARE_FOOT } from "@hoopstay/core";
import {
  asce716,
  asce722,
  type Exposure,
  mapSpeed,
  type QuarterReading,
  type SpeedBasis,
  type WindPlace,
} from "@hoopstay/load";
import type { CombinationId, Slope } from "@hoopstay/stability";
import type { PathComplaint } from "../read/complaints.ts";
import { compassPoints, type SiteInput } from "../schema/site-schema.ts";
import { type Assumption, Assumptions } from "./assumption.ts";

/** The place in SI. */
export interface Site {
  readonly name: string;
  readonly place: WindPlace;
  readonly speed: number;
  readonly basis: SpeedBasis;
  readonly riskCategory: string | null;
  /** Speed at which everything is checked, m/s. */
  readonly mapSpeed: number;
  readonly slope: Slope | null;
  readonly friction: number;
  readonly frictionCitation: Citation;
  readonly bearing: number;
  readonly bearingCitation: Citation;
  /** Compass bearing of the front, rad clockwise from north; null where unknown. */
  readonly frontBearing: number | null;
  readonly combination: CombinationId;
  readonly reading: { readonly reading: QuarterReading; readonly reason: string } | null;
  readonly now: string;
  readonly assumptions: readonly Assumption[];
}

const bearingRows = { "1": 4000, "2": 2000, "3": 1500, "4A": 1000, "4B": 1000 } as const;
const bearingTable = cite("24-cfr-3285", "table to 3285.202", "read");
const bareSoil: Record<string, number> = { silt: 0.2, "silty sand": 0.25, sand: 0.3, gravel: 0.4 };
const slippery = 0.15;

/** The site of a site file that has passed its schema, in SI, with every assumption listed. */
export function readSiteModel(input: SiteInput, complaints: PathComplaint[]): Site | undefined {
  const assumed = new Assumptions();
  const { wind } = input;
  if (!wind.basis) {
    complaints.push({
      path: ["wind", "speed"],
      code: "speed-without-basis",
      given: wind.speed.text,
      expected: "basis beside it: design, service or gust",
      mend: "design: from a current map (strength level); service: from an older map; gust: a real or forecast 3-second gust.",
    });
  }
  if (wind.basis === "design" && !wind.risk_category) {
    complaints.push({
      path: ["wind", "risk_category"],
      code: "key-missing",
      expected: "risk_category of the map the speed is from: I, II, III or IV",
      mend: "Agricultural houses are category I; open to the public they are not.",
    });
  }
  if (input.exposure === "B" && !input.upwind_fetch) {
    complaints.push({
      path: ["upwind_fetch"],
      code: "key-missing",
      expected: "upwind_fetch: the built-up or wooded ground upwind, as measured",
      mend: "Exposure B needs its fetch recorded; open pasture is C.",
    });
  }
  const exposure = assumed.take<Exposure>(
    input.exposure,
    "C",
    "exposure",
    "C, open country",
    "open pasture; D near open water is worse and must be entered",
  );
  const bearing = bearingOf(input, assumed, complaints);
  const friction = frictionOf(input, assumed);
  const frontBearing = input.front_faces ? bearingAngle(input.front_faces) : null;
  const slope = slopeOf(input, frontBearing, assumed);
  const combination = assumed.take<CombinationId>(
    input.combination,
    "ASD",
    "combination",
    "ASD",
    "both are printed; this one gives the verdict",
  );
  if (!input.elevation) {
    const why = "K_e = 1 at any height: safe side above the sea";
    assumed.list.push({ key: "elevation", used: "sea level", why });
  }
  if (!input.hill) {
    const why = "no hill entered; on or near a visible hill enter it: the wind is stronger there";
    assumed.list.push({ key: "hill", used: "no hill", why });
  }
  const now = assumed.take(input.now, "shut", "now", "shut", "the state it stands in now");
  if (!wind.basis || complaints.length > 0) return undefined;
  const { hill } = input;
  return {
    name: input.site,
    place: {
      edition: wind.standard === "ASCE 7-16" ? asce716 : asce722,
      exposure,
      ...(input.elevation ? { elevation: input.elevation.value } : {}),
      ...(hill
        ? {
            hill: {
              shape: hill.shape,
              height: hill.height.value,
              halfLength: hill.half_length.value,
              ...(hill.from_crest ? { distance: hill.from_crest.value } : {}),
            },
          }
        : {}),
    },
    speed: wind.speed.value,
    basis: wind.basis,
    riskCategory: wind.risk_category ?? null,
    mapSpeed: mapSpeed(wind.speed.value, wind.basis),
    slope,
    friction: friction.value,
    frictionCitation: friction.citation,
    bearing: bearing.value,
    bearingCitation: bearing.citation,
    frontBearing,
    combination,
    reading: input.quarter_reading ?? null,
    now,
    assumptions: assumed.list,
  };
}

const bearingAngle = (point: (typeof compassPoints)[number]): number =>
  (compassPoints.indexOf(point) * Math.PI) / 8;

function bearingOf(
  input: SiteInput,
  assumed: Assumptions,
  complaints: PathComplaint[],
): { value: number; citation: Citation } {
  const { ground } = input;
  if (ground?.bearing) {
    return { value: ground.bearing.value, citation: judged("as entered in the site file") };
  }
  const soil = ground?.soil_class;
  if (soil === "5") {
    complaints.push({
      path: ["ground", "soil_class"],
      code: "soil-without-bearing",
      given: "class 5",
      expected: "an allowable bearing pressure: class 5 ground has no published one",
      mend: "Peat, organic clay and fresh fill need an engineer's value: ground.bearing.",
    });
    return { value: 1000 * POUND_PER_SQUARE_FOOT, citation: bearingTable };
  }
  if (soil) return { value: bearingRows[soil] * POUND_PER_SQUARE_FOOT, citation: bearingTable };
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

function frictionOf(input: SiteInput, assumed: Assumptions): { value: number; citation: Citation } {
  const { ground } = input;
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
  if (kind === "mud" || kind === "ice") {
    return { value: 0, citation: judged("on mud or ice no friction is counted") };
  }
  const dry = bareSoil[kind];
  const wet = assumed.take(ground?.wet, true, "ground.wet", "wet", "safe side: 0.15 at most");
  if (dry !== undefined && !wet) {
    return { value: dry, citation: cite("navfac-dm-7.02", `steel on ${kind}`, "read") };
  }
  return {
    value: slippery,
    citation: judged("ground unknown, wet, grass or clay: 0.15; adhesion never added"),
  };
}

function slopeOf(
  input: SiteInput,
  frontBearing: number | null,
  assumed: Assumptions,
): Slope | null {
  if (!input.slope) {
    assumed.list.push({
      key: "slope",
      used: "level ground",
      why: "no slope entered; a slope makes sliding and tipping worse, so measure it",
    });
    return null;
  }
  const angle = input.slope.angle.value;
  if (angle === 0) return null;
  const { downhill } = input.slope;
  if (!downhill || frontBearing === null) {
    assumed.list.push({
      key: "slope.downhill",
      used: "worst direction of every check",
      why: "safe side: the downhill direction or the way the front faces is unknown",
    });
    return { angle, downhill: null };
  }
  // The front is +y; right of it, clockwise on the compass, is +x.
  const turned = bearingAngle(downhill) - frontBearing;
  const exact = (value: number): number => (Math.abs(value) < 1e-15 ? 0 : value);
  return { angle, downhill: [exact(Math.sin(turned)), exact(Math.cos(turned))] };
}
