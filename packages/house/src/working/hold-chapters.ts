import { Chapter } from "@hoopstay/core";
import { proofLoad, stiffnessFromTests, stiffnessWithoutTests } from "@hoopstay/ground";
import { caseStride } from "@hoopstay/load";
import { properties } from "@hoopstay/section";
import { balanceSums } from "@hoopstay/stability";
import { towSummary } from "../hold-down/tow.ts";
import { countedOnRails } from "../layout/layout-review.ts";
import { anchorPulls, sineOf } from "../rail-pull/anchor-pulls.ts";
import { railLoadsOf } from "../rail-pull/rail-loads.ts";
import { groundModulus, modulusOf, railBendingStiffness } from "../rail-pull/rail-stiffness.ts";
import { sidePull, tetherTension, uprightStiffness } from "../rail-pull/tether.ts";
import { basisWords, type Rating, rateKind } from "../rating/rating.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { caseId, setLetters } from "../review/summaries.ts";
import { directionCode } from "../review/words.ts";
import { certificateAt, lowestJoint } from "../together/joint.ts";
import { jointSteps } from "./joint-steps.ts";
import { railBalance } from "./rail-balance.ts";

/** Each kind of anchor on this ground, and each fitted one that is rated otherwise than its kind. */
function ratingsOf({ house, site, ratings }: Evaluation): Rating[] {
  const kinds = house.anchorKinds.map((kind) => rateKind(kind, site, kind.angle));
  const told = new Set(
    kinds.map(({ kind, angle, allowable }) => `${kind.id} ${angle} ${allowable}`),
  );
  const fitted = ratings.filter((rating): rating is Rating => {
    if (!rating) return false;
    const key = `${rating.kind.id} ${rating.angle} ${rating.allowable}`;
    if (told.has(key)) return false;
    told.add(key);
    return true;
  });
  return [...kinds, ...fitted];
}

function ratingChapters(evaluation: Evaluation): Chapter[] {
  return ratingsOf(evaluation)
    .filter(({ steps }) => steps.length > 0)
    .map((rating, index) => {
      const { kind, steps } = rating;
      const title = `Pull of the ${kind.words}: ${basisWords(rating, evaluation.site)}`;
      const chapter = new Chapter(`H${index + 1}`, title);
      chapter.steps.push(...steps);
      return chapter;
    });
}

/** The worst pull of every fitted anchor, from the upright pull that its rail needs of it. */
function pullChapter(evaluation: Evaluation): Chapter[] {
  const anchors = countedOnRails(evaluation);
  if (anchors.length === 0) return [];
  const loads = railLoadsOf(evaluation);
  const found = anchorPulls(loads, anchors);
  if (found.outcome !== "held") return [];
  const chapter = new Chapter("A", "Worst pull of each anchor, by the stiffness of its rail", [
    "B",
  ]);
  const { tube } = evaluation.house.rail;
  const modulus = modulusOf("convention" in tube ? tube.convention : "other");
  const second = properties(tube).secondMomentX;
  chapter.work(modulus, []);
  chapter.work(railBendingStiffness, [modulus.value, second], { note: "one rail, nominal wall" });
  chapter.work(groundModulus, [], { note: "under the rail's width; it pushes and never pulls" });
  for (const { anchor, upright, governs, stiffnessTimes: times } of found.anchors) {
    const sine = sineOf(anchor);
    const at = evaluation.house.anchors.findIndex(({ name }) => name === anchor.name);
    const tested = evaluation.ratings[at]?.tested;
    if (tested) chapter.work(stiffnessFromTests, [tested], { note: anchor.name });
    else chapter.work(stiffnessWithoutTests, [anchor.allowable], { note: anchor.name });
    chapter.work(uprightStiffness, [anchor.stiffness, sine], {
      note: `${anchor.name}; worst at ${times} times this stiffness`,
    });
    if (governs) {
      const { state, caseIndex, weight } = governs;
      const letter = setLetters(evaluation).get(state.set) ?? "";
      const note = `${anchor.name}: ${state.state.words}, case ${caseId(letter, caseIndex)}, ${weight} weight`;
      railBalance(
        chapter,
        loads,
        anchors,
        { anchor, upright, governs, stiffnessTimes: times },
        note,
      );
    }
    const tension = chapter.work(tetherTension, [upright, sine], { note: anchor.name });
    chapter.work(sidePull, [tension, sine], { note: anchor.name });
    chapter.work(proofLoad, [tension], { note: anchor.name });
  }
  return [chapter];
}

/** The six sums of everything at once in the state that takes least. */
function jointChapter(evaluation: Evaluation): Chapter[] {
  const { site, holds, states } = evaluation;
  const hold = holds.at(-1)?.id ?? "bare";
  const result = lowestJoint(evaluation, states, hold, site.combination);
  const certificate = certificateAt(result);
  if (!certificate) return [];
  const state = states.find(({ set }) => set === result.set)?.state.words ?? "";
  const title = `Everything at once, in balance at ${result.factor.toFixed(4)} of the design wind: ${state}, load case ${result.windCase.number}, wind toward ${directionCode(result.windCase)}, ${result.weight} weight`;
  const chapter = new Chapter("J", title, ["B"]);
  const at = result.row * caseStride;
  const whole = Array.from(
    result.table.components.slice(at, at + 6),
    (unit) => evaluation.pressure * unit,
  );
  jointSteps(chapter, certificate, result.worst.system.problem.terms, whole);
  for (const { formula, inputs } of balanceSums(certificate)) chapter.work(formula, inputs);
  return [chapter];
}

/** The working of what holds the house: anchors in the ground, their pulls, the balance, the drag. */
export function holdChapters(evaluation: Evaluation): Chapter[] {
  const { chapter } = towSummary(evaluation);
  const tow = new Chapter("T", chapter.title);
  tow.steps.push(...chapter.steps);
  return [
    ...ratingChapters(evaluation),
    ...pullChapter(evaluation),
    ...jointChapter(evaluation),
    tow,
  ];
}
