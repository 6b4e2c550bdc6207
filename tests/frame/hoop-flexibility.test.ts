import { expect, test } from "vitest";
import { flexibility, flexibilitySize } from "../../packages/frame/src/hoop/flexibility.ts";
import { expectNear } from "./held-rail.ts";

test("a level member as a cantilever: its end under forces and loads, whatever stood there", () => {
  const [length, section] = [3, { A: 5e-4, I: 2e-7, E: 2e11 }];
  const [EA, EI] = [section.E * section.A, section.E * section.I];
  const into = new Float64Array(3 * flexibilitySize).fill(7);
  flexibility(0, 1, 0, length, section, into, flexibilitySize);
  const [before, found, after] = [0, 1, 2].map((i) =>
    Array.from(into.subarray(i * flexibilitySize, (i + 1) * flexibilitySize)),
  );
  // M = x F_z + M_0 - (q + w) x^2/2 and N = -F_x - p x: integrals of their products, by hand.
  expectNear(
    found ?? [],
    [
      ...[length / EA, 0, length ** 3 / (3 * EI)],
      ...[0, length ** 2 / (2 * EI), length / EI],
      ...[0, -(length ** 4) / (8 * EI), -(length ** 3) / (6 * EI)],
      ...[0, -(length ** 4) / (8 * EI), -(length ** 3) / (6 * EI)],
      ...[length ** 2 / (2 * EA), 0, 0],
    ],
    1e-14,
  );
  for (const beside of [before, after]) expect(beside).toEqual(new Array(flexibilitySize).fill(7));
});
