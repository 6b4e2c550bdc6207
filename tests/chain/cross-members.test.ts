import { type LinkRow, linkCombinations } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { crossMembersLink } from "../../packages/house/src/chain/links/cross-members.ts";
import { context, evaluation } from "./example-chain.ts";

const { rows, notChecked, findings } = crossMembersLink(context);
const [light] = linkCombinations;
if (!light) throw new Error("no combination");
const q = evaluation.pressure;
const partOf = (part: string): LinkRow[] => rows.filter((row) => row.part === part);
const bent = "bending by the rails' twist, with thrust";

describe("cross members", () => {
  test("in no weight V b is the sum of the end moments in one sense: balance of the bar", () => {
    const weightless = { ...light, dead: 0 };
    const { span } = evaluation.house.lines;
    const places = evaluation.house.links.crossMembers?.places.length ?? 0;
    const shears = partOf("shear by the rails' twist");
    expect(shears.length).toBeGreaterThan(0);
    shears.forEach((row, at) => {
      const run = context.runs.railed.find(({ words }) => words === row.run);
      const windCase = context.cases.find((one) => one === row.windCase);
      if (!run || !windCase) throw new Error("no run");
      const ends = run.planWind(windCase).crossEndMoment;
      const [left = 0, right = 0] = ends.slice(2 * (at % places));
      const expected = (light.wind * q * Math.abs(left + right)) / span;
      expect(row.asked(q, weightless).demand).toBeCloseTo(expected, 6);
    });
  });

  test("moments grow beside thrust: the share bends upward, and ends where the member buckles", () => {
    const heights = [1, 2, 3].map((times) => times * q);
    let [grew, buckled] = [0, 0];
    for (const row of partOf(bent)) {
      const [one = 0, two = 0, three = 0] = heights.map((at) => row.ratio(at, light));
      expect(three).toBeGreaterThan(0);
      if (three - two > (two - one) * (1 + 1e-6)) grew += 1;
      if (row.ratio(1000 * q, light) === Number.POSITIVE_INFINITY) buckled += 1;
    }
    expect(grew).toBeGreaterThan(0);
    expect(buckled).toBeGreaterThan(0);
    expect(buckled).toBeLessThan(partOf(bent).length);
  });

  test("weld metal that is assumed, slenderness and the weld's quality are told", () => {
    const told = findings.map(([first]) => String(first));
    expect(told.some((words) => words.includes("weld metal unknown: E70"))).toBe(true);
    expect(told.some((words) => words.startsWith("Cross members: L_c/r is"))).toBe(true);
    expect(notChecked.some(({ why }) => why.startsWith("quality of the weld"))).toBe(true);
  });
});
