import { type HoldReview, type MoveCard, measured, type Words } from "@hoopstay/core";
import type { Site } from "../model/site-model.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { compassPoints } from "../schema/site-schema.ts";

type Question = MoveCard["questions"][number];

const isAssumed = ({ assumptions }: Site, key: string): boolean =>
  assumptions.some((one) => one.key === key);

/** The sixteenth of the compass nearest to a bearing in rad from north. */
function compassOf(bearing: number): string {
  const sixteenth = Math.round((bearing * 8) / Math.PI);
  return compassPoints[((sixteenth % 16) + 16) % 16] as string;
}

const exposures = {
  B: "houses or woods (B)",
  C: "open field (C)",
  D: "open water (D)",
} as const;

function openness(site: Site): Words {
  const { exposure, hill } = site.place;
  const open = isAssumed(site, "exposure")
    ? "Not known: assumed open field (C), the safe side except beside open water."
    : `Upwind: ${exposures[exposure]}.`;
  if (!hill) {
    return isAssumed(site, "hill")
      ? [open, " Hill: not known: assumed none, not the safe side where one is in sight."]
      : [open, " No hill."];
  }
  const { shape, height, distance } = hill;
  const where: Words =
    distance === undefined
      ? [", taken at its crest"]
      : [", ", measured(Math.abs(distance), "length"), " from its crest"];
  return [open, ` On a ${shape}, `, measured(height, "length"), " high", ...where, "."];
}

const octants = [
  "front",
  "front right",
  "right",
  "back right",
  "back",
  "back left",
  "left",
  "front left",
];

function sloping(site: Site): Words {
  const { slope, frontBearing } = site;
  if (!slope) {
    return isAssumed(site, "slope")
      ? [
          "Not known: assumed level, which is not the safe side: lay a level on a skid and enter it.",
        ]
      : ["Level."];
  }
  const { angle, downhill } = slope;
  const steep = measured(angle, "angle", 2);
  if (!downhill) {
    return [steep, ", falling to: not known: assumed the worst way of every check, safe side."];
  }
  const turned = Math.atan2(downhill[0], downhill[1]);
  const eighth = ((Math.round((turned * 4) / Math.PI) % 8) + 8) % 8;
  const side = `the house's ${octants[eighth]}`;
  const compass = frontBearing === null ? "" : ` (${compassOf(frontBearing + turned)})`;
  return [steep, `, falling to ${side}${compass}.`];
}

function facing({ frontBearing }: Site): Words {
  if (frontBearing === null) {
    return [
      "Not known: assumed that wind comes from any side, safe side; sides here are by the house's own front.",
    ];
  }
  return [`The front faces ${compassOf(frontBearing)}.`];
}

function ground(site: Site, hold: HoldReview): Words {
  const assumed: string[] = [];
  if (isAssumed(site, "ground.wet")) assumed.push("Wet or dry: not known: assumed wet, safe side.");
  if (isAssumed(site, "ground.kind")) {
    assumed.push("Surface: not known: assumed slippery, safe side.");
  }
  const told =
    hold.ground.words.length > 0
      ? hold.ground.words
      : ["Not known: assumed to hold nothing untested, safe side."];
  return [...told, ...assumed.map((one) => ` ${one}`)];
}

const bases = {
  design: "designed for a map speed of ",
  service: "designed for an older, service-level map speed of ",
} as const;

function wind({ basis, speed }: Site): Words {
  const value = measured(speed, "speed");
  if (basis === "gust")
    return ["A gust of ", value, " (3 seconds, at 10 m) is what it was checked for."];
  return [
    "Coming gust: not known, ask the forecast for it. This card is ",
    bases[basis],
    value,
    "; a forecast gust is never compared with that.",
  ];
}

function services({ servicesLocated }: Site): Words {
  if (servicesLocated === true) return ["Located. Keep clear of every mark."];
  return servicesLocated === false
    ? ["Not located: set no anchor until they are."]
    : ["Not known: assumed under every anchor, safe side: have them located before one is set."];
}

/** The six questions of a move, asked of this place, with what the site file says today. */
export function cardQuestions({ site }: Evaluation, hold: HoldReview): Question[] {
  return [
    { ask: "Are buried pipes and cables located?", answer: services(site) },
    { ask: "How hard and how wet is the ground?", answer: ground(site, hold) },
    { ask: "How steep is it, and which way does it fall?", answer: sloping(site) },
    { ask: "How open is it: woods, field, water, hill?", answer: openness(site) },
    { ask: "Which way does the front face?", answer: facing(site) },
    { ask: "What wind is coming?", answer: wind(site) },
  ];
}
