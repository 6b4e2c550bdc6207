import { FOOT } from "@hoopstay/core";
import { holdingFriction } from "@hoopstay/ground";
import { pipeOfNominal } from "@hoopstay/section";
import type { HouseInput } from "../schema/house-schema.ts";
import type { SiteInput } from "../schema/site-schema.ts";
import { tubesIn } from "./tubes-in.ts";

const goesAway =
  /\b(animals?|hens?|chickens?|birds?|poultry|sheep|ewes?|lambs?|goats?|pigs?|cattle|cows?|calves|feed|hay|straw|bedding|litter|manure|compost|crops?|plants?)\b/i;
const staysThere = /\b(feeders?|racks?|hurdles?|bins?|nest|roosts?|shelves|benches)\b/i;

/** What is likely a slip in a house file, though nothing contradicts it: told beside the answer. */
export function houseDoubts(input: HouseInput): string[] {
  const names = [...(input.fittings ?? []), ...(input.ballast ?? [])].map(({ what }) => what);
  const weights = names
    .filter((what) => goesAway.test(what) && !staysThere.test(what))
    .map(
      (what) =>
        `Look again: "${what}" counts as holding the house down. Animals, feed, bedding and crops are not there in every storm: take it out, or enter only what always stays.`,
    );
  const tubes = tubesIn(input).flatMap(({ path, tube }) => {
    const meant = tube.outside && tube.wall && pipeOfNominal(tube.outside.value, tube.wall.value);
    return meant
      ? `Look again: ${path.join(".")} has the wall of ${meant.name} and its nominal size for an outside. A pipe is larger outside than its name: measure round it, or enter size: ${meant.name}.`
      : [];
  });
  return [...weights, ...new Set(tubes), ...sizeDoubts(input.hoops)];
}

/** Common practice, no source: beyond these a house that is dragged is rare, a slip of a unit is not. */
const commonSizes = {
  span: ["width", "6 to 60 ft", 6 * FOOT, 60 * FOOT],
  length: ["length", "8 to 200 ft", 8 * FOOT, 200 * FOOT],
  spacing: ["spacing of hoops", "2 to 12 ft", 2 * FOOT, 12 * FOOT],
} as const;

function sizeDoubts(hoops: HouseInput["hoops"]): string[] {
  return (["span", "length", "spacing"] as const).flatMap((key) => {
    const [words, common, least, most] = commonSizes[key];
    const size = hoops[key];
    return !size || (size.value >= least && size.value <= most)
      ? []
      : `Look again: a ${words} of ${size.text} was entered. Houses that are dragged have ${common} (common practice, no source): check the number and its unit.`;
  });
}

/** What is likely a slip in a site file. */
export function siteDoubts({ exposure, ground }: SiteInput, wet: boolean): string[] {
  const doubts: string[] = [];
  if (exposure === "B") {
    doubts.push(
      "Look again: exposure B needs woods, buildings or the like close together for more than 1500 ft upwind, whichever way the wind blows (ASCE 7-16 26.7.3, from memory). Open pasture with hedges is C, where the wind loads more.",
    );
  }
  const entered = ground?.friction?.low;
  const ours = holdingFriction(ground?.frozen ? "ice" : (ground?.kind ?? "unknown"), wet).friction;
  if (entered && entered.value > ours) {
    doubts.push(
      `Look again: friction of ${entered.text} was entered; ${ours} would be counted on this ground. What a house asks to be dragged is no friction that holds it.`,
    );
  }
  return doubts;
}
