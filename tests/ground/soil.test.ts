import {
  type Clue,
  classOfClues,
  classRows,
  classValues,
  type Feel,
  feelRows,
  type SoilClass,
  soilClasses,
} from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const seed = 3285;
const inchPound = 0.0254 * 0.45359237 * 9.80665;
const probe = (torque: number): Clue => ({ kind: "probe torque", torque: torque * inchPound });
const blow = (blows: number): Clue => ({ kind: "blow count", blows });
const felt = (feel: Feel): Clue => ({ kind: "feel", feel });

const place = (soilClass: SoilClass | null): number =>
  soilClass === null ? Number.NaN : soilClasses.indexOf(soilClass);

const clue: fc.Arbitrary<Clue> = fc.oneof(
  fc.double({ min: 0, max: 900, noNaN: true }).map(probe),
  fc.double({ min: 0, max: 80, noNaN: true }).map(blow),
  fc.constantFrom(...(Object.keys(feelRows) as Feel[])).map(felt),
);

describe("soil class from clues", () => {
  test.each([
    [probe(550.5), "2"],
    [probe(350.5), "4A"],
    [probe(275.5), "4B"],
    [probe(174.9), "5"],
    [blow(39.5), "3"],
    [blow(23.5), "4A"],
    [blow(17.5), "4B"],
    [blow(11.9), "5"],
  ])("a reading between two bands takes the lower class: %o", (reading, soilClass) => {
    expect(classOfClues([reading]).soilClass).toBe(soilClass);
  });

  test("every class and every feel names where it comes from; a feel tells the class it gives", () => {
    for (const { soilClass, citation } of classRows) {
      expect(citation.place, soilClass).toMatch(/3285\.202/);
      expect(["read", "memory"], soilClass).toContain(citation.grade);
    }
    for (const { soilClass, citation } of Object.values(feelRows)) {
      expect(citation.grade).toBe("judgement");
      expect(citation.place).toContain(`: ${soilClass}; safe side`);
    }
  });

  test("several clues give the lowest class, and all are listed", () => {
    const clues = [blow(45), probe(300), felt("thumb only dents")];
    const read = classOfClues(clues);
    expect(read.soilClass).toBe("4B");
    expect(read.clues.map((one) => one.soilClass)).toEqual(["2", "4A", "4B"]);
    expect(read.clues.map((one) => one.clue)).toEqual(clues);
  });

  test("no clue is unknown ground", () => {
    expect(classOfClues([])).toEqual({ soilClass: null, clues: [] });
  });

  test("one more clue never gives a better class, and their order does not matter", () => {
    fc.assert(
      fc.property(fc.array(clue, { minLength: 1, maxLength: 5 }), clue, (clues, more) => {
        const before = place(classOfClues(clues).soilClass);
        const after = place(classOfClues([...clues, more]).soilClass);
        expect(after).toBeGreaterThanOrEqual(before);
        expect(place(classOfClues([more, ...clues].toReversed()).soilClass)).toBe(after);
        expect(after).toBeGreaterThan(0);
      }),
      { seed, numRuns: 500 },
    );
  });

  test("a higher reading never gives a worse class", () => {
    const reading = fc.double({ min: 0, max: 900, noNaN: true });
    fc.assert(
      fc.property(reading, reading, fc.constantFrom(probe, blow), (one, other, make) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const worse = place(classOfClues([make(low)]).soilClass);
        expect(place(classOfClues([make(high)]).soilClass)).toBeLessThanOrEqual(worse);
      }),
      { seed, numRuns: 500 },
    );
  });

  test.each([blow(-1), probe(Number.NaN), blow(Number.POSITIVE_INFINITY)])(
    "a reading that cannot be is refused: %o",
    (reading) => {
      expect(() => classOfClues([reading])).toThrow(/out-of-range/);
    },
  );
});

describe("what a class stands for", () => {
  const angles = Object.entries(classValues.rows);

  test("presumed phi lies in or below the band of EM 1110-2-2504 for the class's blow count", () => {
    // table 3-1: medium N 11-30 phi 31-36; dense N 31-50 phi 37-41; moist 110-140 pcf at most
    const bands = [
      { from: 11, to: 30, low: 31, high: 36 },
      { from: 31, to: 50, low: 37, high: 41 },
    ];
    for (const [soilClass, { frictionAngle, unitWeight }] of angles) {
      const blows = classRows.find((row) => row.soilClass === soilClass)?.blows ?? Number.NaN;
      const band = bands.find(({ from, to }) => blows >= from && blows <= to);
      expect(frictionAngle).toBeLessThanOrEqual(band?.high ?? Number.NaN);
      expect(unitWeight).toBeLessThanOrEqual(140);
    }
  });

  test("presumed c_u is at most 5 N kPa, Stroud's higher slope of medium plasticity", () => {
    for (const [soilClass, { shearStrength }] of angles) {
      const blows = classRows.find((row) => row.soilClass === soilClass)?.blows ?? Number.NaN;
      expect(shearStrength).toBeLessThanOrEqual(5 * blows);
    }
  });

  test("a feel never gives a class of more strength than its band begins with", () => {
    // Terzaghi and Peck bands of c_u, kPa; EM 1110-2-2504 bands of phi, degrees: their low ends
    const least: Readonly<Record<Feel, number>> = {
      "fist sinks in": 0,
      "thumb pushes in easily": 12,
      "thumb pushes in with effort": 25,
      "thumb only dents": 50,
      "thumbnail dents": 100,
      "thumbnail hardly dents": 200,
      "sand runs": 28,
      "rod driven easily": 31,
      "rod driven hard": 37,
      "rod stops": 41,
    };
    for (const [feel, row] of Object.entries(feelRows)) {
      if (row.soilClass === "5") continue;
      const values = classValues.rows[row.soilClass];
      const presumed = row.likeness === "clay" ? values.shearStrength : values.frictionAngle;
      expect(presumed, feel).toBeLessThanOrEqual(least[feel as Feel]);
    }
  });
});
