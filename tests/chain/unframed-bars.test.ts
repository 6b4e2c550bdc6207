import { chainContext, evaluate, type House } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { tiesLink } from "../../packages/house/src/chain/links/ties.ts";
import { fittedWith, house, site } from "./fitted-house.ts";

const brace = { ...(house.links.ridge ?? house.links.hoop), count: 18, length: 1.2 };
const ends = { from: { x: 1, z: house.links.ties?.height ?? 0 }, to: { x: 2, z: 1.5 } };
const unplaced = { from: null, to: null };

const told = (change: Partial<House["links"]>) =>
  tiesLink(chainContext(evaluate(fittedWith(change), site))).notChecked.map(
    ({ words, why }) => `${words}: ${why}`,
  );

describe("bars of the file that no hoop is computed with are not checked, and said", () => {
  test("with both ends entered they are checked", () => {
    expect(house.links.ties).not.toBeNull();
    expect(told({ kneeBraces: { ...brace, ...ends } })).toEqual([]);
  });

  test("without their ends, and without a collar tie", () => {
    expect(told({ kneeBraces: { ...brace, ...unplaced } })).toEqual([
      expect.stringMatching(/^the knee braces: their ends are not entered/),
    ]);
    const untied = { ties: null, trussBars: { ...brace, ...ends } };
    expect(told(untied)).toEqual(["the truss bars: no collar tie is entered"]);
  });
});
