import { linkCombinations } from "@hoopstay/house";
import { caseStride } from "@hoopstay/load";
import { describe, expect, test } from "vitest";
import { footParts } from "../../packages/house/src/chain/along/foot-parts.ts";
import { hoopsAlong } from "../../packages/house/src/chain/along/hoop-along.ts";
import { pushedHoops } from "../../packages/house/src/chain/along/pushed-hoops.ts";
import { wallCases } from "../../packages/house/src/chain/along/wall-cases.ts";
import { factorsOf } from "../../packages/house/src/chain/hoop/foot-forces.ts";
import { governingFeet } from "../../packages/house/src/chain/hoop/governing-feet.ts";
import { endBraces, fitted, fittedWith } from "./fitted-house.ts";
import { fittedContext as context, demandOf, design, linkOf } from "./made-links.ts";

const { shell } = context.evaluation;
const open = linkOf(fitted, "ridge-line");

describe("the push along the house", () => {
  test("end walls and hoops together feel the whole-house load of the same case, film on", () => {
    let looked = 0;
    for (const { set, caseIndex, push } of wallCases(context)) {
      if (set.covering === "bare") continue;
      const whole = set.table.components[caseIndex * caseStride + 1] as number;
      const hoops = push.line * shell.hoopLine * shell.hoopCount;
      expect(push.front + push.back + hoops).toBeCloseTo(whole, 9);
      looked += 1;
    }
    expect(looked).toBeGreaterThan(30);
  });

  test("what pushes a hoop stands on its two feet, however it is spread", () => {
    const { byPurlins, byWall, even } = hoopsAlong(context);
    expect(2 * (byPurlins?.foot.shear ?? 0)).toBeCloseTo(1, 9);
    expect(2 * byWall.foot.shear).toBeCloseTo(1, 9);
    expect(2 * even.foot.shear).toBeCloseTo(context.runs.outline.line.length, 9);
  });

  test("feet left out are never asked more than those kept, wind by wind", () => {
    const pushed = pushedHoops(context);
    const none = () => ({ uplift: 0, thrust: 0, couple: 0 });
    for (const { reading, ratio, part } of footParts(context)) {
      const kept = governingFeet(context, pushed, reading, ({ windCase }) => windCase.direction);
      const untied = (run: { readonly tied: boolean }): boolean => !run.tied;
      for (const combination of linkCombinations) {
        for (const times of [0.1, 0.4, 1, 2.5]) {
          const most = new Map<unknown, Map<string, number>>();
          const at = (one: (typeof pushed)[number], side: "left" | "right"): number => {
            const [d, w] = factorsOf(context, one.answer, times * design, combination);
            const { shear, tipping, torque, atBolts } = one.demand;
            const along = {
              shear: w * shear,
              tipping: w * tipping,
              torque: w * torque,
              atBolts: w * atBolts,
            };
            return ratio(reading.at(one.answer, side, d, w, none()), along, combination.method);
          };
          for (const { pushed: one, side, sets } of kept) {
            if (!untied(one.answer.run)) continue;
            const value = at(one, side);
            for (const set of sets.keys()) {
              const own = most.get(set) ?? new Map<string, number>();
              most.set(set, own);
              const { direction } = one.answer.windCase;
              own.set(direction, Math.max(value, own.get(direction) ?? 0));
            }
          }
          for (const one of pushed) {
            if (!untied(one.answer.run)) continue;
            const value = Math.max(at(one, "left"), at(one, "right"));
            for (const set of one.sets.keys()) {
              const best = most.get(set)?.get(one.answer.windCase.direction) ?? 0;
              expect(value, part).toBeLessThanOrEqual(best * (1 + 1e-6));
            }
          }
        }
      }
    }
  });
});

describe("what braces the house along its ridge", () => {
  const braced = linkOf(fittedWith({ endBraces }), "ridge-line");

  test("a brace carries its end's push by its slope: bare frame, (1.3 A / 2 + w l / 4) L / (n s)", () => {
    const wall = (1.3 * shell.endArea) / 2;
    const hoops = (1.2 * shell.hoopDiameter * shell.hoopLine * shell.hoopCount) / 4;
    const expected = ((wall + hoops) * endBraces.length) / (2 * fitted.spacing);
    expect(demandOf(braced.rows, "end-bay brace pulled")).toBeCloseTo(expected, 9);
  });

  test("with braced end bays no hoop bends along the house; without, it is said", () => {
    expect(braced.rows.some(({ part }) => part === "hoop bent along the house")).toBe(false);
    expect(open.rows.some(({ part }) => part === "hoop bent along the house")).toBe(true);
    const said = open.findings.some(([first]) => String(first).startsWith("No braced end bay"));
    expect(said).toBe(true);
  });

  test("what holds the ends of a brace is told as not checked, with the force", () => {
    const ends = braced.notChecked.find(({ words }) => words.includes("made fast with"));
    expect(ends?.demand?.value).toBeGreaterThan(0);
  });

  test("braces no longer than a bay are not counted", () => {
    const short = { ...endBraces, length: fitted.spacing };
    const { rows } = linkOf(fittedWith({ endBraces: short }), "ridge-line");
    expect(rows.some(({ part }) => part.startsWith("end-bay brace"))).toBe(false);
  });
});
