import type { AnchorRow, HoldReview, MoveCard } from "@hoopstay/core";
import { type LinkId, linkIds } from "@hoopstay/ground";
import type { House } from "../model/house-model.ts";
import type { CardLayout } from "./card-layout.ts";

type Row = MoveCard["shopping"][number];

const linkWords: Readonly<Record<LinkId, string>> = {
  tether: "tether with its tensioner (strap, chain or cable)",
  eye: "eye or clevis at the anchor",
  attachment: "attachment of a tether to the rail",
};

const hardest = (rows: readonly AnchorRow[]): number =>
  Math.max(...rows.map(({ pull, proof }) => Math.max(pull, proof)));

/** Anchors of a kind that is still to be set, with everything between ground and rail. */
function toSet({ layout, kind }: CardLayout, why: string): Row[] {
  const { anchors } = layout;
  if (!kind || anchors.length === 0) return [];
  const links = linkIds.map((id): Row => {
    const unknown = kind.notChecked.includes(id) ? "its working load limit is not known yet; " : "";
    return {
      what: linkWords[id],
      count: anchors.length,
      atLeast: hardest(anchors),
      why: `${unknown}the proof pull goes through it; a breaking load never counts`,
    };
  });
  return [{ what: kind.words, count: anchors.length, atLeast: null, why }, ...links];
}

/** Links of the fitted anchors that nobody has told the working load limit of. */
function linksToFindOut(house: House, hold: HoldReview): Row[] {
  const rows = hold.fitted?.anchors ?? [];
  if (rows.length === 0) return [];
  return linkIds.flatMap((id): Row[] => {
    const open = rows.filter(({ name }) => {
      const kind = house.anchors.find((anchor) => anchor.name === name)?.kind ?? null;
      return hold.kinds.find((one) => one.id === kind)?.notChecked.includes(id) ?? true;
    });
    const why = "find the mark on what is fitted, or buy marked parts: it is not known";
    return open.length === 0
      ? []
      : [{ what: linkWords[id], count: open.length, atLeast: hardest(open), why }];
  });
}

function ballast(hold: HoldReview): Row[] {
  const holding = hold.ballast.find(({ holds, beside }) => holds && !beside);
  return (holding?.pieces ?? []).map(({ what, perRail }) => ({
    what,
    count: 2 * perRail,
    atLeast: null,
    why: "ballast in place of anchors; must be tied: loose ballast counts nothing",
  }));
}

/** What is still to be bought or found before the house can be left. */
export function shoppingList(
  house: House,
  hold: HoldReview,
  chosen: CardLayout | null,
  better: CardLayout | null,
): Row[] {
  const loose = house.ballast
    .filter(({ fixed }) => !fixed)
    .map(({ what }): Row => {
      const why = "must be tied: loose ballast counts nothing";
      return { what: `straps to tie down: ${what}`, count: 1, atLeast: null, why };
    });
  const held = chosen?.layout.holds === true;
  const anchors: Row[] = chosen?.kind
    ? toSet(chosen, "to be set where the plan shows")
    : better && !held
      ? toSet(better, "what is fitted does not hold; a layout of these does")
      : [];
  const instead = held || anchors.length > 0 ? [] : ballast(hold);
  return [...anchors, ...linksToFindOut(house, hold), ...instead, ...loose];
}
