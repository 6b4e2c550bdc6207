import { madeFrom, renderReport } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { everywhere, hostile } from "./hostile-words.ts";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";

describe.each(hostile)("hostile text: %s", (_, words) => {
  const review = everywhere(sampleReview({}, 5), words);
  const { html } = renderReport({ ...review, date: words }, { system: "us" });

  it("stays text", () => {
    expect(unbalanced(html)).toEqual([]);
    const [shown = "", data = "", ...others] = html.split("<script");
    expect(/<b>&|<i>/.exec(shown)?.[0]).toBeUndefined();
    expect(data.split("</script>")).toEqual([
      expect.stringMatching(/^ type="application\/json" id="made-from">[^<>]*$/),
      "\n</main>\n</body>\n</html>\n",
    ]);
    expect(others).toEqual([]);
    expect(madeFrom(html)?.files).toEqual({ house: words, site: words });
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
