import { measured } from "@hoopstay/core";
import { describe, expect, test } from "vitest";
import { type ShownChain, showChain } from "../../packages/cli/src/show/chain.ts";
import { everywhere, hostile } from "../report/hostile-words.ts";
import { sampleChain } from "../report/sample-chain.ts";

const names = ["Harrow Brook lambing and greens house", "Hill top"] as const;
const shown = (changes: Partial<ShownChain> = {}): ShownChain => ({
  system: "us",
  combination: "ASD",
  beside: ["snow, ice"],
  ...changes,
});

describe.each(["us", "si"] as const)("what goes first, in %s", (system) => {
  const text = showChain(sampleChain(), names, shown({ system }));

  test("fits the screen's width and its units", () => {
    for (const line of text.split("\n")) {
      expect(line.length, line).toBeLessThanOrEqual(80);
      expect(line).not.toMatch(/ $/);
    }
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(text).not.toMatch(system === "us" ? / m\/s|\bkN\b/ : / mph|\blb\b/);
    expect(text).toContain("consult a licensed engineer");
  });

  test("leads with the verdict and the answer", () => {
    expect(text).toMatch(/^A LINK FAILS {3}\S/);
    const [, answer] = text.split("\n");
    expect(answer).toMatch(/^ {2}First to go, at a (61 mph|27 m\/s) gust with both end doors open/);
  });
});

describe("what goes first", () => {
  const chain = sampleChain();
  const [first, ...others] = chain.links;
  if (!first) throw new Error("the sample has no links");

  test("gives every link its numbers, and gusts rounded down", () => {
    const text = showChain(chain, names, shown());
    for (const [place, { words, worst }] of chain.links.entries()) {
      const { workingGust, ratio } = worst.check;
      const gust = Number.isFinite(workingGust)
        ? `${Math.floor(workingGust / 0.44704)} mph`
        : "no limit";
      const rank = String(place + 1).padStart(2);
      expect(text).toContain(`${rank} ${gust.padStart(8)}  ${words}: `);
      expect(text).toContain(`ratio ${ratio.ASD.toFixed(2)}, code speed `);
    }
    expect(text).toMatch(/\d lb asked of 652 lb, ratio/);
  });

  test("says so where it is beyond any strength, and where nothing was left out", () => {
    const check = {
      ...first.worst.check,
      demand: measured(Number.POSITIVE_INFINITY, "ratio"),
      resistance: measured(1, "ratio"),
      ratio: { ASD: Number.POSITIVE_INFINITY, LRFD: Number.POSITIVE_INFINITY },
    };
    const links = [{ ...first, worst: { ...first.worst, check } }, ...others];
    const text = showChain(sampleChain({ links }), names, shown());
    expect(text).toMatch(/^ {10}beyond any strength, code speed /m);
    const whole = { holds: true, notChecked: [] };
    expect(showChain(sampleChain(whole), names, shown())).toMatch(/^LINKS HOLD {3}/);
  });

  test("never says that every link holds where one was not checked", () => {
    const text = showChain(sampleChain({ holds: true }), names, shown());
    expect(text).toMatch(/^NOT ALL KNOWN {3}.*\n {2}What could be checked holds/);
    expect(text).toMatch(/Not checked, with what it would have to carry/);
    expect(text).toContain("no plates are entered; 546 lb·ft");
    expect(text).toContain("snow, ice");
  });

  test.each(hostile)(
    "hostile text neither steers the terminal nor leaves its width: %s",
    (...of) => {
      const [, words] = of;
      const made = everywhere(sampleChain(), words, ["id", "link", "measure"]);
      const links = made.links.map((link, place) => ({ ...link, words: `link ${place}` }));
      const text = showChain(
        { ...made, links },
        [words, words],
        shown({ report: words, beside: [words] }),
      );
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
      expect(/[\u0000-\u0009\u000b-\u001f\u202a-\u202e\u2066-\u2069]/.exec(text)).toBeNull();
      const [, ...lines] = text.split("\n").toReversed();
      for (const line of lines.filter((one) => !one.startsWith("  Report: ")))
        expect(line.length, line).toBeLessThanOrEqual(80);
    },
  );
});
