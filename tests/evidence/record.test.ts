import { declaredFormulas, sources } from "@hoopstay/core";
import {
  chapterIds,
  chapterRows,
  makeEvidence,
  readPublished,
  unreached,
} from "@hoopstay/evidence";
import { describe, expect, test } from "vitest";
import { fixtureTexts } from "../published/fixture-texts.ts";

/** So many formulas may be moved by no value; the number may only fall. */
const mostUnreached = 96;

/** So many values were compared when this was written; files may be added, never lost. */
const leastValues = { wind: 732, section: 1231, frame: 5196, ground: 229, "pull-test": 127 };
const leastPrinted = 2955;

const review = makeEvidence(fixtureTexts);
const rows = review.chapters.flatMap((chapter) => chapter.rows);

describe("the record of the verification sheet", () => {
  test("every chapter has rows, and none is lost", () => {
    expect(review.chapters.map(({ id }) => id)).toEqual(chapterIds);
    for (const { id, counts } of review.chapters) {
      const least = (leastValues as Readonly<Record<string, number>>)[id] ?? 1;
      expect(counts.values, id).toBeGreaterThanOrEqual(least);
    }
    const published = rows.filter(({ file }) => file.startsWith("published/"));
    expect(published.length).toBeGreaterThanOrEqual(leastPrinted);
  });

  test("every value of every published file stands in it once, and nothing else", () => {
    const expected = readPublished(fixtureTexts).flatMap(({ file, cases }) =>
      cases.flatMap(({ title, values, refused }) => [
        ...values.map(({ quantity, printed }) => `${file} ${title} ${quantity} ${printed}`),
        ...(refused === undefined ? [] : [`${file} ${title} refused: ${refused}`]),
      ]),
    );
    const found = rows
      .filter(({ file }) => file.startsWith("published/"))
      .map(({ file, title, quantity, published }) => {
        const what = published.startsWith("refused") ? published : `${quantity} ${published}`;
        return `${file.slice("published/".length)} ${title} ${what}`;
      });
    expect(found.toSorted()).toEqual(expected.toSorted());
    const files = new Set(rows.map(({ file }) => file));
    expect([...files].toSorted()).toEqual(Object.keys(fixtureTexts).toSorted());
  });

  test("a file that no chapter computes fails", () => {
    const name = "published/statics/tow-pull.yaml";
    const text = fixtureTexts[name] as string;
    const strange = { [name]: text.replace("quantity: tow pull", "quantity: tow push") };
    expect(() => makeEvidence({ ...fixtureTexts, ...strange })).toThrow("tow push");
  });

  test("numbers are numbers, inside what is allowed, and their titles name source and grade", () => {
    for (const row of rows) {
      const { ours, off, allowed, values, title, edition, grade, verdict, reason } = row;
      expect(Number.isFinite(off), title).toBe(true);
      expect(off, title).toBeLessThanOrEqual(allowed);
      expect(values, title).toBeGreaterThanOrEqual(1);
      if (typeof ours === "number") expect(Number.isFinite(ours), title).toBe(true);
      expect(title).toContain(`[${grade}]`);
      expect(sources[row.source].edition).toBe(edition);
      expect(verdict === "known", title).toBe(reason !== null);
    }
  });

  test("totals are the sums of their chapters, by verdict and by grade", () => {
    const { totals, chapters } = review;
    const sum = (pick: (counts: (typeof chapters)[number]["counts"]) => number): number =>
      chapters.reduce((total, { counts }) => total + pick(counts), 0);
    expect(totals.values).toBe(sum(({ values }) => values));
    expect(totals.agree + totals.known + totals.differ).toBe(totals.values);
    expect(Object.values(totals.grades).reduce((total, count) => total + count, 0)).toBe(
      totals.values,
    );
    expect(totals.differ).toBe(0);
  });

  test("statics and whole houses of the fixtures are graded as what they are: derived", () => {
    const others = rows.filter(({ file }) => !file.startsWith("published/"));
    expect(new Set(others.map(({ grade }) => grade))).toEqual(new Set(["derived"]));
  });
});

describe("formulas and the values that hold them", () => {
  const without = review.formulas.filter(({ heldBy }) => heldBy === null).map(({ id }) => id);

  test("those that no value moves are exactly the listed ones", () => {
    expect(without.toSorted()).toEqual(Object.keys(unreached).toSorted());
    expect(
      review.formulas.filter((one) => (one.heldBy === null) !== (one.reason !== null)),
    ).toEqual([]);
  });

  test("their number only falls", () => {
    expect(without.length).toBeLessThanOrEqual(mostUnreached);
    expect(review.totals.formulas.declared - review.totals.formulas.reached).toBe(without.length);
  });

  test("the formulas are given back as they were", () => {
    for (const formula of declaredFormulas()) {
      if (!("value" in formula)) continue;
      const property = Object.getOwnPropertyDescriptor(formula, "value");
      expect(property?.get, formula.id).toBeUndefined();
      expect(formula.evaluate()).toBe(formula.value);
    }
    const again = chapterRows(fixtureTexts, "member");
    expect(review.chapters.find(({ id }) => id === "member")?.rows).toEqual(again);
  });
});
