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
import { siteDoubts } from "../read/doubts.ts";
import { compassPoints, type SiteInput } from "../schema/site-schema.ts";
import { type Assumption, Assumptions } from "./assumption.ts";
import { type SiteGround, siteGroundOf } from "./site-ground.ts";

/** The place in SI. */
export interface Site extends SiteGround {
  readonly name: string;
  readonly place: WindPlace;
  readonly speed: number;
  readonly basis: SpeedBasis;
  readonly riskCategory: string | null;
  /** Speed at which everything is checked, m/s. */
  readonly mapSpeed: number;
  readonly slope: Slope | null;
  /** Steepest slope on the way of a move, rad. */
  readonly dragSlope: number | null;
  /** Compass bearing of the front, rad clockwise from north; null where unknown. */
  readonly frontBearing: number | null;
  readonly combination: CombinationId;
  readonly reading: { readonly reading: QuarterReading; readonly reason: string } | null;
  readonly now: string;
  readonly assumptions: readonly Assumption[];
  /** What is likely a slip in its file. */
  readonly doubts: readonly string[];
}

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
  const ground = siteGroundOf(input, assumed, complaints);
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
    ...ground,
    dragSlope: input.drag_slope?.value ?? null,
    frontBearing,
    combination,
    reading: input.quarter_reading ?? null,
    now,
    assumptions: assumed.list,
    doubts: siteDoubts(input, ground.wet),
  };
}

const bearingAngle = (point: (typeof compassPoints)[number]): number =>
  (compassPoints.indexOf(point) * Math.PI) / 8;

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
