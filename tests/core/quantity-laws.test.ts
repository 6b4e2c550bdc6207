import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Dimension,
  dimensions,
  quantityCodes,
  readQuantity,
  type System,
  show,
  spellingsOf,
} from "../../packages/core/src/quantity/index.ts";

const seed = 20_260_101;
const runs = { seed, numRuns: 2000 };

const dimension = fc.constantFrom(...dimensions);
const system = fc.constantFrom<System>("us", "si");
const digits = fc.integer({ min: 1, max: 12 });
const magnitude = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -9, max: 12 }))
  .map(([mantissa, power]) => mantissa * 10 ** power);
const value = fc.tuple(magnitude, fc.constantFrom(1, -1)).map(([size, sign]) => size * sign);

function readValue(text: string, dimension: Dimension): number {
  const read = readQuantity(text, dimension);
  if (!read.ok) throw new Error(`${text}: ${read.code}: ${read.mend}`);
  return read.value;
}

/** Half a unit of the last figure, at most half of 10^(1 - digits) of the value. */
const shownWithin = (value: number, digits: number) =>
  Math.abs(value) * (0.5 * 10 ** (1 - digits) + 1e-12);

describe(`laws of quantities, seed ${seed}`, () => {
  it("read(show(x)) is x to the figures shown", () => {
    fc.assert(
      fc.property(value, dimension, system, digits, (x, dimension, system, digits) => {
        const back = readValue(show(x, dimension, system, digits), dimension);
        expect(Math.abs(back - x)).toBeLessThanOrEqual(shownWithin(x, digits));
      }),
      runs,
    );
  });

  it("what was read from a shown text is shown as the same text or without its noughts", () => {
    fc.assert(
      fc.property(value, dimension, system, digits, (x, dimension, system, digits) => {
        const text = show(x, dimension, system, digits);
        const again = show(readValue(text, dimension), dimension, system, digits);
        const bare = (shown: string) =>
          shown.replace(/(\.\d*?)0+(?=\D|$)/, "$1").replace(/\.(?=\D)/, "");
        expect(bare(again)).toBe(bare(text));
      }),
      runs,
    );
  });

  it("both unit systems show the same quantity", () => {
    fc.assert(
      fc.property(value, dimension, digits, (x, dimension, digits) => {
        const us = readValue(show(x, dimension, "us", digits), dimension);
        const si = readValue(show(x, dimension, "si", digits), dimension);
        expect(Math.abs(us - si)).toBeLessThanOrEqual(2 * shownWithin(x, digits));
      }),
      runs,
    );
  });

  it("a minus sign turns the value round and changes nothing else", () => {
    fc.assert(
      fc.property(magnitude, dimension, system, (x, dimension, system) => {
        const text = show(x, dimension, system);
        expect(readValue(`-${text}`, dimension)).toBe(-readValue(text, dimension));
        expect(readValue(`\u2212${text}`, dimension)).toBe(-readValue(text, dimension));
      }),
      runs,
    );
  });

  it("a known spelling is either read or called a wrong dimension", () => {
    const spelling = fc.constantFrom(...dimensions.flatMap(spellingsOf));
    fc.assert(
      fc.property(spelling, dimension, (spelling, dimension) => {
        const read = readQuantity(`3 ${spelling}`, dimension);
        expect(read.ok).toBe(spellingsOf(dimension).includes(spelling));
        if (!read.ok) expect(read.code).toBe("wrong-dimension");
      }),
      runs,
    );
  });

  const pieces = fc.constantFrom(
    ..."0123456789.,+-/:' \"%e°²½−′″\u202e\u0000".split(""),
    ..."ft in m lb kg N kN mph psf per sq · ^2 NaN Infinity constructor".split(" "),
  );
  const hostile = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.array(pieces, { maxLength: 12 }).map((some) => some.join("")),
    fc.anything(),
  );
  it("anything at all gives a finite value or a coded refusal, never a throw", () => {
    fc.assert(
      fc.property(hostile, dimension, (given, dimension) => {
        const read = readQuantity(given, dimension);
        if (read.ok) {
          expect(Number.isFinite(read.value)).toBe(true);
          expect(read.text).toBe(String(given));
          return;
        }
        expect(quantityCodes).toContain(read.code);
        expect(read.given).not.toMatch(/\p{C}/u);
        expect(read.mend).toMatch(/^[^\p{C}]+\.$/u);
        expect(read.expected).not.toBe("");
      }),
      { seed, numRuns: 20_000 },
    );
  });

  it("a long text is read or refused in a moment", () => {
    const started = performance.now();
    for (const piece of ["1", " ", "-", "1 ", "1/", "1,", "ft ", "'", "sq ", " per ", "\u202e"])
      for (const head of ["", "1", "1 ft "]) readQuantity(head + piece.repeat(20_000), "length");
    expect(performance.now() - started).toBeLessThan(2000);
  });
});
