import { renderCompare, renderReport, renderSearch } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { everywhere, hostile } from "./hostile-words.ts";
import { sampleChain } from "./sample-chain.ts";
import { sampleCompare, sampleSearch } from "./sample-compare.ts";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";
import { withoutData } from "./without-data.ts";

const keysOfProgram = ["id", "link", "measure", "kind"];

describe.each(hostile)("hostile text: %s", (_, words) => {
  const made = <Value>(value: Value): Value => everywhere(value, words, keysOfProgram);
  const stamp = { date: words, digest: words, version: words };
  const of = { house: words, site: words, stamp, system: "us" } as const;
  const pages = [
    ["report", renderReport(sampleReview({ chain: made(sampleChain()) }, 5), of).html],
    ["comparison", renderCompare(made(sampleCompare()), of)],
    ["search", renderSearch(made(sampleSearch()), of)],
  ] as const;

  it.each(pages)("stays text in the %s", (_name, html) => {
    expect(unbalanced(html)).toEqual([]);
    expect(/<script|<b>&|<i>/.exec(withoutData(html))?.[0]).toBeUndefined();
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html.match(/<main>/g)).toHaveLength(1);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(/[\u0000-\u0008]|\p{Cs}/u.exec(html)?.index).toBeUndefined();
  });

  it.each(pages)("keeps its writing direction to itself in the %s", (_name, html) => {
    const outside = html.replace(/<bdi>[^<]*<\/bdi>/g, "");
    expect(/[\u202a-\u202e\u2066-\u2069]/.exec(outside)?.index).toBeUndefined();
  });

  it.each(pages)("names every region once in the %s", (_name, html) => {
    const names = [...html.matchAll(/ aria-label="([^"]*)"/g)].map(([, name]) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
