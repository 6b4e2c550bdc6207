import { type HoldReview, measured, speedLimit, type Words } from "@hoopstay/core";
import type { Evaluation } from "../review/evaluate.ts";
import { designGust } from "../storm-ladder/layout-gust.ts";
import type { StateGust } from "../storm-ladder/state-gusts.ts";
import type { CardEnd, CardLayout } from "./card-layout.ts";
import { tooWindyToMove } from "./unhook-list.ts";

interface CardVerdict {
  readonly go: boolean;
  readonly headline: Words;
}

const reaches = (gust: number, asked: number): boolean => gust >= asked * (1 - 1e-12);

function against({ site }: Evaluation): Words {
  const speed = measured(site.speed, "speed");
  return site.basis === "gust"
    ? ["a gust of ", speed]
    : ["the design wind (", speed, ` ${site.basis} speed)`];
}

/**
 * Go or no-go, and why. The least wind load belongs to a design by the standard: against a coming
 * gust it is said, and does not stop the move.
 */
export function cardVerdict(
  evaluation: Evaluation,
  hold: HoldReview,
  chosen: CardLayout | null,
  end: CardEnd,
  loose: StateGust,
): CardVerdict {
  const no = (...headline: Words): CardVerdict => ({ go: false, headline });
  if (!chosen) {
    const [next] = hold.ground.findOut;
    const find: Words = next
      ? [" Find out first: ", ...next]
      : [" Have a licensed engineer rate an anchor for this ground."];
    return no("No go: no rated anchor holds it here.", ...find);
  }
  const { layout, kind } = chosen;
  const which = kind ? `${layout.anchors.length} of these: ${kind.words}` : "the anchors fitted";
  if (!layout.holds || !end.passes || !reaches(end.gust, designGust(evaluation))) {
    const gust: Words =
      end.gust === 0
        ? ["does not hold even in calm air"]
        : ["stands a gust of no more than ", speedLimit(end.gust)];
    return no(
      `No go: with ${which} it does not hold against `,
      ...against(evaluation),
      "; shut it ",
      ...gust,
      ".",
    );
  }
  if (tooWindyToMove(evaluation, loose)) {
    return no(
      "No go: a gust of ",
      measured(evaluation.site.speed, "speed"),
      " is coming, and loose it stands ",
      speedLimit(loose.gust),
      ". Move it when the wind is over.",
    );
  }
  const { servicesLocated, basis } = evaluation.site;
  if (!end.carriesLeast && basis !== "gust") {
    return no(
      `No go: with ${which} it holds against `,
      ...against(evaluation),
      ", but not the least wind load of the standard.",
    );
  }
  if (servicesLocated !== true) {
    const told = servicesLocated === null ? " (services_located is not told)" : "";
    return no(`No go before buried pipes and cables are located${told}; then set ${which}.`);
  }
  const least = end.carriesLeast ? "" : " It does not carry the standard's least wind load.";
  return {
    go: true,
    headline: [
      `Go: with ${which}, set and proved, it holds against `,
      ...against(evaluation),
      `. Shut it before you unhook.${least}`,
    ],
  };
}
