import { type ChainReview, firstToGo } from "@hoopstay/core";
import { expect, it } from "vitest";

/** Links from the weakest on, and the first of each state. */
const chain = (links: readonly string[], firsts: readonly string[]) =>
  ({
    links: links.map((id) => ({ id })),
    states: firsts.map((link) => ({ first: { link } })),
  }) as unknown as ChainReview;

it("is the weakest of those that go first in some state", () => {
  expect(firstToGo(chain(["hoop", "bolts"], ["bolts", "hoop"]))).toBe("hoop");
});

it("passes over what is weaker but goes first in no state", () => {
  expect(firstToGo(chain(["ties", "bolts", "hoop"], ["hoop", "bolts"]))).toBe("bolts");
});

it("is none where nothing was checked", () => {
  expect(firstToGo(chain([], []))).toBeUndefined();
  expect(firstToGo(chain(["hoop"], []))).toBeUndefined();
});
