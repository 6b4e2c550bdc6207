import { renderCard, renderLadder, renderReport } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { everywhere, hostile } from "./hostile-words.ts";
import { sampleDrawings } from "./sample-drawings.ts";
import { sampleCard, sampleHold, sampleLadder } from "./sample-hold.ts";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";
import { withoutData } from "./without-data.ts";

const keysOfProgram = ["id", "side", "verdict", "measure", "source", "grade"];
const us = { system: "us" } as const;

describe.each(hostile)("hostile text: %s", (_, words) => {
  const hold = everywhere(sampleHold(), words, keysOfProgram);
  const ladder = everywhere(sampleLadder(), words, keysOfProgram);
  const card = everywhere(sampleCard(), words, keysOfProgram);
  const stamp = { date: words, digest: words, version: words };
  const pages = [
    ["report", renderReport(sampleReview({ hold, ladder }, 5), us).html],
    ["card", renderCard(card, sampleDrawings(), us)],
    ["ladder", renderLadder(ladder, { ...us, stamp })],
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
});
