import type { Evaluation } from "../../review/evaluate.ts";
import { governingOf } from "../../review/summaries.ts";
import type { KnownSlide } from "./shell-stability.ts";

/** The slide that governs each load set of a house as it is held. */
export function knownSlides({ states }: Evaluation): KnownSlide[] {
  const sets = [...new Set(states.map(({ set }) => set))];
  return sets.flatMap((set, number) => {
    const hold = set.holds.at(-1)?.id ?? "bare";
    const slide = governingOf(set, hold, "ASD").find(({ check }) => check === "slide");
    if (!slide) return [];
    const { caseIndex, withoutArch } = slide.byLimit;
    return [{ set: number, caseIndex, withoutArch }];
  });
}
