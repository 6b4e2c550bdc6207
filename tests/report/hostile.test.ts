import { renderReport } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";

const hostile = [
  ["closing tags", "</style></title></bdi></svg></section><script>alert(1)</script>"],
  ["quotes", "\" onload=\"alert(1)' x='"],
  ["comment and entity ends", "--> ]]> &lt;b&gt; & &#x3c;i>"],
  ["style ends", '";} body{display:none} /* \\'],
  ["right-to-left marks", "\u202eyawa ti evig\u2067 \u05d0\u05d1"],
  ["controls and half pairs", "a\u0000b\u0007c\ud800"],
  ["no end", "x".repeat(5000)],
] as const;

/** Every string of a record replaced, but for those that are keys of the program. */
function everywhere(value: unknown, words: string, key = ""): unknown {
  const fixed = [
    "kind",
    "check",
    "hold",
    "measure",
    "file",
    "per",
    "combination",
    "source",
    "grade",
  ];
  if (typeof value === "string") return fixed.includes(key) ? value : words;
  if (Array.isArray(value)) return value.map((one) => everywhere(one, words, key));
  if (typeof value !== "object" || value === null || key === "chapters") return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, everywhere(one, words, name)]),
  );
}

describe.each(hostile)("hostile text: %s", (_, words) => {
  const review = everywhere(sampleReview({}, 5), words) as ReturnType<typeof sampleReview>;
  const { html } = renderReport({ ...review, date: words }, { system: "us" });

  it("stays text", () => {
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
});
