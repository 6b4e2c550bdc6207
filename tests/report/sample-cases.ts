import type { CaseRow } from "@hoopstay/core";

const directions = [
  "from the left",
  "from the right",
  "from the front",
  "from the back",
  "from the left and the front",
  "from the right and the front",
  "from the left and the back",
  "from the right and the back",
];
const sets = ["A", "B", "C", "D", "E"];

/** Load cases with numbers of the usual size; no engineering in them. */
export const sampleCases = (count: number): CaseRow[] =>
  Array.from({ length: count }, (_, place): CaseRow => {
    const loadSet = sets[Math.floor((place * sets.length) / count)] as string;
    const swing = Math.sin(place * 1.7);
    return {
      id: `${loadSet}-${place + 1}`,
      loadSet,
      loadCase: place % 8 < 4 ? 1 : 3,
      direction: directions[place % 8] as string,
      reading: place % 3 === 0 ? "by arc" : "by span",
      set: place % 5 < 3 ? "ground-sprung" : "on walls",
      inside: place % 2 === 0 ? "+0.55" : "\u22120.55",
      weight: place % 7 === 0 ? "high" : "low",
      components: [4200 * swing, -900 * swing, 6100 + 900 * swing, 1200, -5300 * swing, 12.4],
      ratios: [0.92, 0.5 + 0.7 * swing, 0.41, 0, 0.33, 1.04].map((ratio) => Math.max(0, ratio)),
    };
  });
