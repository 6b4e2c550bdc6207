import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { power } from "@hoopstay/core";
import { expect, test } from "vitest";

const packages = join(import.meta.dirname, "../../packages");

test.each([
  [2, 3, 8],
  [0.3048, 3, 0.3048 * 0.3048 * 0.3048],
  [2, -2, 0.25],
  [7, 0, 1],
  [0, 1.5, 0],
])("%d to the %d is %d, to the last bit", (base, exponent, expected) => {
  expect(power(base, exponent)).toBe(expected);
});

test("other exponents agree with the engine's own to twelve figures", () => {
  for (const base of [0.01, 0.658, 1.3, 25, 400])
    for (const exponent of [0.2105, 1.25, 1.5, 2.25, -0.5])
      expect(power(base, exponent) / base ** exponent).toBeCloseTo(1, 12);
});

/** Squares, and two to a whole number, are exact or rounded once by every engine. */
const engines = /\*\* (?!2\b)|Math\.pow/;
const exact = /\b2 \*\* \w+\)/;

test("no package leaves a power other than a square to the engine", () => {
  const found = readdirSync(packages, { recursive: true, encoding: "utf8" })
    .filter((file) => /^\w+\/src\/.*\.tsx?$/.test(file))
    .flatMap((file) =>
      readFileSync(join(packages, file), "utf8")
        .split("\n")
        .filter((line) => !/^\s*(\/\*\*|\*|\/\/)/.test(line))
        .filter((line) => engines.test(line) && !exact.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
  expect(found).toEqual([]);
});
