import { renderSearch } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { showSearch } from "../../packages/cli/src/show/search.ts";
import { everywhere, hostile } from "../report/hostile-words.ts";
import { sampleSearch } from "../report/sample-compare.ts";
import { unbalanced } from "../report/unbalanced.ts";

describe.each(hostile)("a search full of hostile words: %s", (_, words) => {
  const review = everywhere(sampleSearch(), words);
  const stamp = { date: words, digest: words, version: words };
  const html = renderSearch(review, { house: words, site: words, stamp, system: "us" });

  it("stays text on its page", () => {
    expect(unbalanced(html)).toEqual([]);
    expect(/<script|<b>&|<i>/.exec(html)?.[0]).toBeUndefined();
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html.match(/<main>/g)).toHaveLength(1);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(/[\u0000-\u0008]|\p{Cs}/u.exec(html)?.index).toBeUndefined();
  });

  it("keeps its writing direction to itself", () => {
    const outside = html.replace(/<bdi>[^<]*<\/bdi>/g, "");
    expect(/[\u202a-\u202e\u2066-\u2069]/.exec(outside)?.index).toBeUndefined();
  });

  it("cannot steer the screen, nor make a line wider than it", () => {
    const shown = showSearch(review, [words, words], "us", undefined);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    const steering = /[\u0000-\u0009\u000b-\u001f\u202a-\u202e\u2066-\u2069]/;
    expect(steering.exec(shown)?.index).toBeUndefined();
    expect(Math.max(...shown.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});
