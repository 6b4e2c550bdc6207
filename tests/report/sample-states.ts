import { type CheckSummary, type Measure, measured, type StateSummary } from "@hoopstay/core";

const kinds: readonly (readonly [string, string, Measure])[] = [
  ["lift", "lifts off", "force"],
  ["tip-right", "tips to the right", "moment"],
  ["tip-left", "tips to the left", "moment"],
  ["tip-front", "tips to the front", "moment"],
  ["tip-back", "tips to the back", "moment"],
  ["slide", "slides", "force"],
];

function checksOf(strength: number): CheckSummary[] {
  return kinds.map(([check, words, measure], place) => {
    const gust = strength * (1 + 0.22 * place);
    const ratio = (33 / gust) ** 2;
    const never = check === "tip-front" && strength > 20;
    return {
      check,
      words,
      ratio: never ? { ASD: 0, LRFD: 0 } : { ASD: ratio, LRFD: 1.07 * ratio },
      codeSpeed: never
        ? { ASD: Number.POSITIVE_INFINITY, LRFD: Number.POSITIVE_INFINITY }
        : { ASD: gust / 0.714, LRFD: gust / 0.74 },
      workingGust: never ? Number.POSITIVE_INFINITY : gust,
      demand: measured(9000 * ratio, measure),
      resistance: measured(9000, measure),
      governs: {
        id: `A-${17 + place}`,
        loadCase: place === 5 ? 3 : 1,
        direction: place === 5 ? "from the left and the front" : "from the left",
        reading: "by arc",
        set: "ground-sprung",
        inside: "pushes out (+0.55)",
        weight: "low",
      },
      cases: {
        ratio: { ASD: `A-${17 + place}`, LRFD: `A-${17 + place}` },
        codeSpeed: { ASD: `F-${3 + place}`, LRFD: `F-${3 + place}` },
      },
    };
  });
}

const words: readonly (readonly [string, string, number])[] = [
  ["all shut", "A", 1],
  ["front door open", "B", 0.86],
  ["both end doors open", "B", 0.84],
  ["left side up", "B", 0.8],
  ["both sides up", "C", 0.78],
  ["front end wall missing", "D", 0.74],
  ["film off, end walls standing", "E", 2.4],
];

/** Seven states, each by its own weight and as fitted. */
export function sampleStates(): StateSummary[] {
  return words.flatMap(([state, set, factor], place) =>
    (["bare", "fitted"] as const).map((hold): StateSummary => {
      const checks = checksOf((hold === "bare" ? 9.4 : 27.5) * factor);
      const [first] = checks as [CheckSummary];
      return {
        id: `state-${place}`,
        words: state,
        hold,
        holdWords: hold === "bare" ? "by its own weight" : "with the anchors and ballast fitted",
        enclosure: place === 0 ? "enclosed" : "partially enclosed",
        insideCoefficients: [0.55, -0.55],
        now: place === 1,
        set,
        checks,
        first,
        holds: first.ratio.ASD <= 1,
        least: {
          ratio: hold === "bare" ? 1.31 : 0.42,
          check: "slides",
          load: "16 psf on the strip",
        },
      };
    }),
  );
}
