import type { Draw } from "./draw.ts";
import type { Tree } from "./entry.ts";
import { Size } from "./size.ts";

export const compass = "N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW".split(" ");

/** What a law asks of the sites it is about. */
export interface SiteKinds {
  readonly level?: boolean;
}

function groundOf(draw: Draw): Tree {
  const kind = draw.pick([
    "unknown",
    "grass",
    "clay",
    "silt",
    "silty sand",
    "sand",
    "gravel",
    "mud",
  ]);
  const sandy = draw.chance(50);
  return {
    kind,
    wet: draw.pick([undefined, "yes", "no"]),
    frozen: draw.chance(6) ? "yes" : undefined,
    soil_class: draw.maybe(40, () => draw.pick(["2", "3", "4A", "4B"])),
    bearing: draw.maybe(20, () => draw.amount([800, 3000, "psf"], [40_000, 150_000, "Pa"])),
    friction: draw.maybe(20, () => ({
      low: new Size(draw.whole(5, 50), "%"),
      reason: "dragged with a scale",
    })),
    like: draw.pick([undefined, "sand", "clay", "unknown"]),
    engineer: draw.maybe(20, () => ({
      ...(sandy
        ? { friction_angle: new Size(draw.whole(25, 40), "deg") }
        : { shear_strength: draw.amount([300, 1500, "psf"], [15_000, 70_000, "Pa"]) }),
      unit_weight: draw.amount([90, 130, "pcf"], [14_000, 20_000, "N/m3"]),
      by: "an engineer",
    })),
    probe: draw.maybe(15, () => draw.amount([200, 600, "in-lb"], [22, 68, "N-m"])),
    told_when: draw.pick([undefined, "wet", "dry"]),
  };
}

/** A site as an owner would write it. */
export function siteTree(draw: Draw, house: Tree, { level }: SiteKinds): Tree {
  const basis = draw.pick(["gust", "service", "design"]);
  const exposure = draw.pick([undefined, "B", "C", "D"]);
  // Slanted tethers on a slope take a search, of seconds where downhill is unknown: few houses.
  const aslant = /"toward":"(out|in|front|back)"/.test(JSON.stringify(house));
  const downhill = () => draw.pick(compass);
  const slope = draw.maybe(aslant ? 5 : 35, () => ({
    angle: new Size(draw.whole(1, 8), "deg"),
    downhill: draw.maybe(60, downhill),
  }));
  const only = house.only_these_states !== undefined;
  return {
    site: "Random pasture",
    wind: {
      standard: draw.pick(["ASCE 7-16", "ASCE 7-22"]),
      speed:
        basis === "design"
          ? draw.amount([60, 120, "mph"], [27, 54, "m/s"])
          : draw.amount([15, 60, "mph"], [7, 27, "m/s"]),
      basis,
      risk_category: basis === "design" ? draw.pick(["I", "II"]) : undefined,
    },
    exposure,
    upwind_fetch: exposure === "B" ? "woods for a mile" : undefined,
    elevation: draw.maybe(30, () => draw.length(5, 1500)),
    hill: draw.maybe(20, () => ({
      shape: draw.pick(["ridge", "escarpment", "hill"]),
      height: draw.length(10, 40),
      half_length: draw.length(60, 200),
      from_crest: draw.maybe(60, () => draw.length(5, 80).times(draw.pick([1, -1]))),
    })),
    slope: level ? undefined : slope,
    ground: draw.maybe(80, () => groundOf(draw)),
    front_faces: slope && aslant ? draw.pick(compass) : draw.maybe(60, () => draw.pick(compass)),
    combination: draw.pick([undefined, "ASD", "LRFD"]),
    quarter_reading: draw.maybe(20, () => ({
      reading: draw.pick(["arc", "span"]),
      reason: "asked for",
    })),
    now: only ? "storm-damage" : undefined,
  };
}
