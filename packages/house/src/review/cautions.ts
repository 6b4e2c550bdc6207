import { type ChainReview, linkIds } from "@hoopstay/core";
import { linkWords } from "../chain/link-words.ts";

/** Cautions that stand with every result. */
export const cautions: readonly string[] = [
  "This is not a sealed design. Consult a licensed engineer before anyone relies on it.",
  "The local building authority's rules come first.",
  "Working gust: the real gust at which allowable values are reached. Act well before it, at three quarters of it: forecasts miss gusts.",
  "One storm survived is not a rating. A bent or rusted frame voids this result.",
  "Nobody inside or downwind in a storm.",
  "Locate buried services before any anchor is set.",
  "No welding on galvanised tube without ventilation and removal of the zinc.",
  "In cold air (-10 C) a gust loads 9 % more than the standard's air density assumes.",
  "A pull entered for an anchor is taken as entered. One rated by pull tests, theory or class holds only for the ground as it was told. A label rating is no capacity in this ground.",
];

/** Strength, which is the matter of the load path. */
const strength: readonly string[] = [
  "strength of hoops, stubs, bolts, welds, rails, cross members, end walls and cover, so that a part may give way before the house moves: ask hoopstay first",
];

/** What no command checks. */
const never: readonly string[] = [
  "snow, ice",
  "tornado and downburst cores, debris, flood, earthquake",
  "fatigue, corrosion, film tearing and flutter",
  "shade cloth, net and bales: every covering counts as solid film",
  "animals against the frame, people on the frame, towing shocks, public use",
  "links of an anchor (tether, eye, attachment to the rail) that are not given",
  "anchors set in old holes, worn or rusted",
  "loosening of anchors by many gusts, beyond the factor of 0.8 on a test pulled once",
  "what sliding and torsion add to one anchor's share: they act in the all-at-once check only",
  "bumps and hollows under the rails: the ground is taken as flat",
  "a slope to the side while dragging, ploughing of the skid noses, ruts, stones and stumps",
];

/** What is not checked, and said so wherever a result stands that was made without the load path. */
export const notChecked: readonly string[] = [...strength, ...never];

/** What the load path itself leaves out, whatever the house. */
const beyondTheChain: readonly string[] = [
  "links under wind on a corner, or of all the house turned by it (load cases 2 to 4): links are rated with the wind square to a side or an end",
  "ballast standing on cross members",
];

/** What is not checked beside the parts that the load path names itself. */
export function notCheckedBeside({ links, notChecked: open }: ChainReview): readonly string[] {
  const told = new Set([...links.map(({ id }) => id), ...open.map(({ link }) => link)]);
  const absent = linkIds.filter((id) => !told.has(id)).map((id) => linkWords[id]);
  return [
    ...(absent.length === 0 ? [] : [`not rated, or not in the house file: ${absent.join(", ")}`]),
    ...beyondTheChain,
    ...never,
  ];
}

/** All that is still not checked where the load path was worked out. */
export const notCheckedAfter = (chain: ChainReview): readonly string[] => [
  ...chain.notChecked.map(({ words, why }) => `${words}: ${why}`),
  ...notCheckedBeside(chain),
];
