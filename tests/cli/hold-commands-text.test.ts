import { describe, expect, test } from "vitest";
import { forecastOf } from "../../packages/cli/src/commands/forecast.ts";
import { showCard } from "../../packages/cli/src/show/card.ts";
import { showHold } from "../../packages/cli/src/show/hold.ts";
import { showLadder } from "../../packages/cli/src/show/ladder.ts";
import { showPulls } from "../../packages/cli/src/show/pulls.ts";
import { everywhere, hostile } from "../report/hostile-words.ts";
import { sampleCard, sampleHold, sampleLadder, samplePulls } from "../report/sample-hold.ts";

const names = ["Harrow Brook lambing and greens house", "Hill top"] as const;
const keysOfProgram = ["id", "side", "verdict", "measure", "source", "grade"];

describe.each(["us", "si"] as const)("text in %s", (system) => {
  const texts = {
    hold: showHold(sampleHold(), names, system, true),
    card: showCard(sampleCard(12), system),
    ladder: showLadder(sampleLadder(), system),
    pulls: showPulls(samplePulls(), names, system),
  };

  test.each(Object.entries(texts))("%s fits the screen's width and its units", (_, text) => {
    for (const line of text.split("\n")) {
      expect(line.length, line).toBeLessThanOrEqual(80);
      expect(line).not.toMatch(/ $/);
    }
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(text).not.toMatch(system === "us" ? / m\/s|\bkN\b/ : / mph|\blb\b/);
    expect(text).toContain("consult a licensed engineer");
  });

  test("hold leads with the answer, on two screens at most", () => {
    const text = showHold(sampleHold(), names, system, false);
    expect(text).toMatch(/^DOES NOT HOLD {3}\S/);
    expect(text.trimEnd().split("\n").length).toBeLessThanOrEqual(48);
    expect(showHold(sampleHold({ holds: true }), names, system, false)).toMatch(/^HOLDS {3}\S/);
  });
});

describe.each(hostile)("hostile text: %s", (_, words) => {
  const made = <Value>(value: Value): Value => everywhere(value, words, keysOfProgram);
  const texts = [
    showHold(made(sampleHold()), [words, words], "us", true),
    showCard(made(sampleCard()), "us"),
    showLadder(made(sampleLadder()), "us"),
    showPulls(made(samplePulls()), [words, words], "us"),
  ];

  test("neither steers the terminal nor leaves its width", () => {
    for (const text of texts) {
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
      expect(/[\u0000-\u0009\u000b-\u001f\u202a-\u202e\u2066-\u2069]/.exec(text)).toBeNull();
      for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    }
  });
});

describe("the forecast gust", () => {
  test("is read with its unit, or is not given", () => {
    expect(forecastOf(undefined)).toBeNull();
    expect(forecastOf("45 mph")).toBeCloseTo(20.1168, 9);
    expect(forecastOf("20 m/s")).toBe(20);
  });

  test.each([
    ["45", "unit-missing"],
    ["45 mph mean", "not-a-number"],
    ["45 mhp", "unit-unknown"],
    ["45 ft", "wrong-dimension"],
    ["", "not-a-number"],
    ["0 mph", "not-positive"],
    ["-5 mph", "not-positive"],
    ["900 m/s", "out-of-range"],
  ])("%j is refused with %s, and a gust is asked for", (given, code) => {
    const refused = expect.objectContaining({
      code,
      key: "--gust",
      expected: expect.stringMatching(/gust.*never a mean/),
    });
    expect(() => forecastOf(given)).toThrow(expect.objectContaining({ complaints: [refused] }));
  });
});
