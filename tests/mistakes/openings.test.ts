import { describe, expect, test } from "vitest";
import { casesOf, checkOf, refusedOf, told } from "./told.ts";

const sound = told();
const { pressure } = sound.result;
const { L, b } = sound.evaluation.shell;
/** Plan of the cover: inside pressure pushes it up in full. */
const plan = L * b;
const upliftOf = (state: string): number =>
  Math.max(...casesOf(sound, state).map(({ components }) => components.fz));
const stateOf = (id: string) => sound.result.states.find((one) => one.id === id);

describe("inside pressure left out, or taken as balancing itself in a floorless house", () => {
  test("a shut house carries GC_pi 0.18 on its plan: table 26.13-1", () => {
    const outside = Math.max(
      ...casesOf(sound, "shut")
        .filter(({ inside_coefficient: inside }) => inside === 0.18)
        .map(({ components }) => components.fz),
    );
    const sucked = Math.max(
      ...casesOf(sound, "shut")
        .filter(({ inside_coefficient: inside }) => inside === -0.18)
        .map(({ components }) => components.fz),
    );
    expect(outside - sucked).toBeCloseTo(2 * 0.18 * pressure * plan, 3);
    expect(upliftOf("shut")).toBe(outside);
  });

  test("one door open: 0.55 instead, all of the difference lifts, nothing of it is balanced", () => {
    expect(upliftOf("front-open") - upliftOf("shut")).toBeCloseTo(
      (0.55 - 0.18) * pressure * plan,
      3,
    );
    const more =
      checkOf(sound, "front-open", "lift").demand - checkOf(sound, "shut", "lift").demand;
    expect(more).toBeCloseTo(0.6 * (0.55 - 0.18) * pressure * plan, 3);
  });

  test("the report says so in figures", () => {
    expect(sound.sentences.join("\n")).toMatch(
      /Inside pressure lifts the whole roof, and no floor balances it: GC_pi 0\.55 x /,
    );
  });
});

describe('one open end called "open building"', () => {
  test.each(["front-missing", "back-missing", "front-open", "left-up"])(
    "%s is partially enclosed, GC_pi 0.55 either way",
    (id) => {
      expect(stateOf(id)?.enclosure).toBe("partially enclosed");
      expect(stateOf(id)?.inside_coefficients).toEqual([0.55, -0.55]);
    },
  );

  test("open needs four walls 80 % open: a house whose file says so, and no less", () => {
    const walls = (share: number): string => {
      const { shell } = sound.evaluation;
      const side = share * L * (shell.springing + shell.arc.length / 4);
      const end = share * shell.endArea;
      return `left: ${side} m2, right: ${side} m2, front: ${end} m2, back: ${end} m2`;
    };
    const state = (share: number) => {
      const open = `states: [{ id: mine, words: mine, openings: { ${walls(share)} } }]\nprices:`;
      const { result } = told({ house: [["prices:", open]] });
      return result.states.find(({ id }) => id === "mine")?.enclosure;
    };
    expect(state(0.81)).toBe("open");
    expect(state(0.79)).not.toBe("open");
  });

  test("the wind is not asked to enter it: no key names the enclosure", () => {
    const found = refusedOf({ site: [["exposure: C", "enclosure: open\nexposure: C"]] });
    expect(found.map(([code]) => code)).toEqual(["key-unknown"]);
  });
});

describe("end-on wind forgotten", () => {
  test("every state is loaded from both sides, both ends and all corners", () => {
    for (const { cases } of sound.result.load_sets)
      expect(new Set(cases.map(({ direction }) => direction))).toEqual(
        new Set(["+x", "-x", "+y", "-y", "+x +y", "+x -y", "-x +y", "-x -y"]),
      );
  });

  test("here it governs: over an end the house tips sooner than over a side", () => {
    const worst = (check: string): number =>
      Math.max(
        ...sound.result.states.map(({ id }) => checkOf(sound, id, check, "fitted").ratio ?? 0),
      );
    const across = Math.max(worst("tip-right"), worst("tip-left"));
    expect(Math.max(worst("tip-front"), worst("tip-back"))).toBeGreaterThan(across);
  });
});

describe("shade cloth as solid, net as nothing", () => {
  test.each(["cover: shade cloth", "shade_cloth: yes", "net: yes"])("%s is not known", (key) => {
    const found = refusedOf({ house: [["film:", `${key}\nfilm:`]] });
    expect(found.map(([code]) => code)).toEqual(["key-unknown"]);
    const within = refusedOf({ house: [["{ layers: 2,", `{ ${key}, layers: 2,`]] });
    expect(within.map(([code]) => code)).toEqual(["key-unknown"]);
  });

  test("every result says that a covering counts as solid, and the bare frame is another state", () => {
    expect(sound.sentences).toContain(
      "shade cloth, net and bales: every covering counts as solid film",
    );
    expect(stateOf("film-off")?.inside_coefficients).toEqual([0]);
    expect(upliftOf("film-off")).toBe(0);
    expect(upliftOf("shut")).toBeGreaterThan(0);
  });
});
