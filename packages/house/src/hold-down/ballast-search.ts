import { type BallastReview, measured, type Words } from "@hoopstay/core";
import {
  type BallastPiece,
  ballastMustBeTied,
  ballastPieces,
  weightOfPiece,
} from "@hoopstay/ground";
import type { CheckId } from "@hoopstay/stability";
import type { Ballast, FittedAnchor, House } from "../model/house-model.ts";
import { type Evaluation, evaluate } from "../review/evaluate.ts";

const pieceOf = (id: string): BallastPiece => {
  const found = ballastPieces.find((piece) => piece.id === id);
  if (!found) throw new Error(`no ballast piece ${id}`);
  return found;
};
const [drum, tote, block] = ["drum-water", "tote-275", "block-2-2-4"].map(pieceOf) as [
  BallastPiece,
  BallastPiece,
  BallastPiece,
];

/** What stands on each rail: pieces spread evenly, and a piece at each end first where one is named. */
interface Mix {
  readonly spread: BallastPiece;
  readonly ends?: BallastPiece;
}
const mixes: readonly Mix[] = [
  { spread: drum },
  { spread: tote },
  { spread: block },
  { spread: drum, ends: block },
];

/** Pieces made fast on both rails between the first and the last hoop. */
function onRails(house: House, { spread, ends }: Mix, perRail: number): Ballast[] {
  const half = house.lines.length / 2;
  return [-1, 1].flatMap((side) => {
    const put = (piece: BallastPiece, y: number): Ballast => ({
      what: piece.name,
      weight: weightOfPiece(piece),
      fixed: true,
      x: (side * house.lines.span) / 2,
      y,
      z: house.rail.depth,
    });
    // Middles of equal lengths, so that one piece stands in the middle and none beyond an end.
    const places = Array.from({ length: perRail }, (_, place) => {
      return half - (2 * half * (place + 0.5)) / perRail;
    });
    const atEnds = ends ? [put(ends, half), put(ends, -half)] : [];
    return [...atEnds, ...places.map((y) => put(spread, y))];
  });
}

/** An anchor's upright part alone: lifting and tipping feel nothing else of it. */
const uprightPart = (anchor: FittedAnchor): FittedAnchor => ({
  ...anchor,
  toward: [0, 0, anchor.toward[2]],
});

/** Whether every check but those left out passes in every state, at the design wind and below it. */
function holdsWith({ site }: Evaluation, changed: House, without: CheckId | null): boolean {
  const { states, pressure } = evaluate(changed, site);
  return states.every(({ set }) =>
    set.governing
      .filter(({ hold, combination }) => hold === "fitted" && combination === site.combination)
      .every(({ checks }) =>
        checks.every(
          ({ check, byRatio, byLimit }) =>
            check === without || (byRatio.ratio <= 1 && byLimit.limit >= pressure * (1 - 1e-12)),
        ),
      ),
  );
}

/** Most pieces a rail that the ground under the rails can carry beside the house itself. */
function mostCarried({ house, site, takeOff }: Evaluation, { spread, ends }: Mix): number {
  const carried = 2 * house.rail.width * house.rail.length * site.bearing - takeOff.high.W;
  const left = carried / 2 - (ends ? 2 * weightOfPiece(ends) : 0);
  return Math.max(0, Math.floor(left / weightOfPiece(spread)));
}

/** Fewest pieces a rail with which the checks hold. More weight also sinks deeper at an end. */
function fewest(most: number, holds: (perRail: number) => boolean): number | null {
  for (let perRail = 1; perRail <= most; perRail += 1) if (holds(perRail)) return perRail;
  return null;
}

const nameOf = ({ spread, ends }: Mix): Words => [
  ...(ends ? [`a ${ends.name} at each rail end, and between them `] : []),
  `${spread.name} (`,
  measured(weightOfPiece(spread), "force"),
  ")",
];

function reviewOf(evaluation: Evaluation, mix: Mix, beside: boolean): BallastReview {
  const { house } = evaluation;
  const most = mostCarried(evaluation, mix);
  const anchors = beside ? house.anchors.map(uprightPart) : [];
  const counted = (without: CheckId | null): number | null =>
    fewest(most, (perRail) => {
      const ballast = [...house.ballast, ...onRails(house, mix, perRail)];
      return holdsWith(evaluation, { ...house, anchors, ballast }, without);
    });
  const upright = counted("slide");
  // Beside anchors the tethers' part in sliding is the all-at-once verdict's to tell.
  const all = upright === null || beside ? null : counted(null);
  const lead: Words = [beside ? "beside the anchors: " : "instead of anchors: ", ...nameOf(mix)];
  const { spread, ends } = mix;
  return {
    beside,
    words: [...lead, `: ${verdict(upright, all, most, beside)}`],
    pieces:
      upright === null
        ? []
        : [
            ...(ends ? [{ what: ends.name, perRail: 2 }] : []),
            { what: spread.name, perRail: all ?? upright },
          ],
    where: ["on both rails, spread evenly"],
    holds: beside ? upright !== null : all !== null,
  };
}

function verdict(
  upright: number | null,
  all: number | null,
  most: number,
  beside: boolean,
): string {
  if (upright === null) {
    return `not enough; the ground under the rails carries no more than ${most} on each`;
  }
  const first = `${upright} on each rail keep it from lifting and tipping`;
  if (beside) return `${first}; sliding is for the tethers`;
  if (all !== null) return `${first}; ${all} also keep it from sliding`;
  return `${first}; against sliding no number that the ground carries is enough: tethers are needed`;
}

/**
 * Ballast made fast on the rails, in place of the anchors and beside those fitted: the fewest pieces
 * of a kind or a mix that hold the design wind in every state. Strength of rails and cross members
 * under it and room for it are not looked at.
 */
export function ballastReviews(evaluation: Evaluation): BallastReview[] {
  const [first, ...others] = mixes.map((mix) => reviewOf(evaluation, mix, false));
  if (!first) return [];
  const alone = [{ ...first, where: [...first.where, `. ${ballastMustBeTied}`] }, ...others];
  if (evaluation.house.anchors.length === 0) return alone;
  return [...alone, ...[mixes[0], mixes[2]].map((mix) => reviewOf(evaluation, mix as Mix, true))];
}
