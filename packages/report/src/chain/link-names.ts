import {
  type ChainReview,
  firstToGo,
  type LinkId,
  type LinkSummary,
  linkIds,
} from "@hoopstay/core";

/** Short names, for drawings and for the headings of narrow columns. */
export const linkNames: Readonly<Record<LinkId, string>> = {
  cover: "cover edge",
  boards: "boards",
  hoop: "hoop",
  ties: "ties",
  bolts: "bolts",
  stub: "stub",
  weld: "weld",
  face: "rail wall",
  rail: "rail",
  splices: "splices",
  "cross-members": "cross members",
  "ridge-line": "ridge line",
  "end-wall": "end wall",
  anchors: "anchors",
};

/** A link of this house with its number on the way from the cover's edge to the ground. */
export interface NumberedLink {
  readonly id: LinkId;
  readonly number: number;
  readonly name: string;
  /** Null where nothing of it could be checked. */
  readonly summary: LinkSummary | null;
  /** Whether it, or a part of it, was not checked. */
  readonly unchecked: boolean;
  readonly first: boolean;
}

/** The links this house has, checked or not, in the order of the load path. */
export function numberedLinks(chain: ChainReview): NumberedLink[] {
  const { links, notChecked } = chain;
  const found = linkIds.flatMap((id) => {
    const summary = links.find((link) => link.id === id) ?? null;
    const unchecked = notChecked.some(({ link }) => link === id);
    return summary === null && !unchecked ? [] : [{ id, summary, unchecked }];
  });
  const first = firstToGo(chain);
  return found.map((link, place) => ({
    ...link,
    number: place + 1,
    name: linkNames[link.id],
    first: link.id === first,
  }));
}

/** The number of each link, by its id. */
export const linkNumbers = (chain: ChainReview): ReadonlyMap<LinkId, number> =>
  new Map(numberedLinks(chain).map(({ id, number }) => [id, number]));
