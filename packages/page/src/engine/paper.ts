import { Refusal, type System } from "@hoopstay/core";
import {
  compareReview,
  holdChapters,
  makeReview,
  moveCard,
  type PathComplaint,
  readVariants,
  workingOfCase,
} from "@hoopstay/house";
import { renderCard, renderLadder, renderReport } from "@hoopstay/report";
import {
  chainSheet,
  compareMarkup,
  holdSheet,
  limitsMarkup,
  workingMarkup,
} from "@hoopstay/report/parts";
import type { Loaded } from "./load.ts";
import type { Paper, WorkingOf } from "./messages.ts";
import { holdOf, ladderOf, linksOf, reviewOf } from "./study.ts";

const full = { full: true };

/** A whole page as the command line writes it, or a part of one to be shown here. HTML. */
export function paperOf(loaded: Loaded, paper: Paper, system: System): string {
  const { evaluation, meta } = loaded;
  switch (paper.name) {
    case "report": {
      const review = makeReview(evaluation, meta, { ...full, holding: holdingOf(loaded) });
      return renderReport(review, { system }).html;
    }
    case "first": {
      const review = makeReview(evaluation, meta, { ...full, chain: linksOf(loaded) });
      return renderReport(review, { system }).html;
    }
    case "card":
      return renderCard(moveCard(evaluation, holdOf(loaded), meta), reviewOf(loaded).drawings, {
        system,
      });
    case "ladder":
      return renderLadder(ladderOf(loaded, paper.forecast), { system, stamp: meta });
    case "hold-sheet":
      return holdSheet(holdOf(loaded), reviewOf(loaded).drawings, system);
    case "chain-sheet": {
      const { drawings, combination } = reviewOf(loaded);
      return chainSheet(linksOf(loaded).review, drawings, combination, system);
    }
    case "cautions":
      return limitsMarkup(makeReview(evaluation, meta, full), system);
    case "working":
      return workingOf(loaded, paper.of, system);
    case "compare":
      return comparedOf(loaded, paper.change, system);
  }
}

/**
 * Today's house beside another, or beside the variants of its file.
 *
 * @throws Refusal with what is wrong with the other
 */
function comparedOf(
  { inputs }: Loaded,
  change: Readonly<Record<string, unknown>> | null,
  system: System,
): string {
  const { today, site } = inputs;
  const asked = change === null ? [] : [{ name: nameOf(change), change, at: [] }];
  const found: PathComplaint[] = [];
  const houses = readVariants(today, asked, site, found);
  if (found.length > 0) {
    throw new Refusal(
      found.map(({ path, ...complaint }) => ({ ...complaint, key: path.map(String).join(".") })),
    );
  }
  return compareMarkup(compareReview(today, houses, site), system);
}

const nameOf = (change: Readonly<Record<string, unknown>>): string =>
  Object.entries(change)
    .map(([key, value]) => `${key}: ${value ?? "none"}`)
    .join("; ");

const holdingOf = (loaded: Loaded) => ({
  hold: holdOf(loaded),
  ladder: ladderOf(loaded, null),
  chapters: holdChapters(loaded.evaluation),
});

/** The working of the anchors or the links, or of one load case in full. */
function workingOf(loaded: Loaded, of: WorkingOf, system: System): string {
  const { evaluation, meta } = loaded;
  if (typeof of === "object") {
    const review = makeReview(evaluation, meta, full);
    return workingMarkup(review, workingOfCase(evaluation, of.caseId), system);
  }
  const beside = {
    anchors: () => ({ holding: holdingOf(loaded) }),
    links: () => ({ chain: linksOf(loaded) }),
  }[of]();
  return workingMarkup(makeReview(evaluation, meta, { ...full, ...beside }), [], system);
}
