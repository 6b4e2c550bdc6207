import { Refusal } from "@hoopstay/core";
import { capacityAlongTether, type Link, type LinkId, linkIds } from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectPrinted } from "../core/printed-formulas.ts";
import { between, holds, seed } from "./pull-test-sample.ts";

const limit = (workingLoadLimit: number): Link => ({ workingLoadLimit });

describe("capacity along the tether", () => {
  test("the weakest link governs and is named", () => {
    const links = { tether: limit(3000), eye: limit(1500), attachment: limit(2500) };
    const found = capacityAlongTether({ ground: 2000, links }, "ASD");
    expect([found.capacity, found.governs, found.notChecked]).toEqual([1500, "eye", []]);
    expect(capacityAlongTether({ ground: 900, links }, "ASD").governs).toBe("ground");
  });

  test("a link not given is named as not checked, and counts as no proof of strength", () => {
    const found = capacityAlongTether({ ground: 2000, links: { eye: limit(5000) } }, "ASD");
    expect(found.notChecked).toEqual(["tether", "attachment"]);
    expect(found.capacity).toBe(2000);
  });

  test("a breaking load alone is refused, with what to do", () => {
    const call = () =>
      capacityAlongTether({ ground: 2000, links: { tether: { breakingLoad: 20_000 } } }, "ASD");
    expect(call).toThrow("key-missing");
    try {
      call();
    } catch (error) {
      expect((error as Refusal).complaints[0]?.mend).toContain("working load limit");
    }
  });

  test("exchanged loads, no load and no ground are refused", () => {
    const call = (ground: number, eye: Link) => () =>
      capacityAlongTether({ ground, links: { eye } }, "ASD");
    expect(call(1, { workingLoadLimit: 9, breakingLoad: 3 })).toThrow("sizes-disagree");
    expect(call(1, limit(0))).toThrow("not-positive");
    expect(call(0, limit(1))).toThrow("not-positive");
    expect(call(Number.NaN, limit(1))).toThrow(Refusal);
  });

  test("a breaking load above the working load limit is fine, one no greater is refused", () => {
    const call = (breakingLoad: number) => () =>
      capacityAlongTether(
        { ground: 9, links: { eye: { workingLoadLimit: 3, breakingLoad } } },
        "ASD",
      );
    expect(call(9)().capacity).toBe(3);
    expect(call(3.001)().capacity).toBe(3);
    expect(call(3)).toThrow("sizes-disagree");
  });

  test("of parts that hold alike the first that the pull meets is told", () => {
    const links = { tether: limit(2000), eye: limit(1000), attachment: limit(1000) };
    expect(capacityAlongTether({ ground: 1000, links }, "ASD").governs).toBe("ground");
    expect(capacityAlongTether({ ground: 2000, links }, "ASD").governs).toBe("eye");
  });

  test("the working names every part, and takes the least only of several", () => {
    const alone = capacityAlongTether({ ground: 2000, links: {} }, "LRFD");
    expect(alone.formula.expression).toBe("c * T_ground");
    const links = { tether: limit(3000), eye: limit(1500), attachment: limit(2500) };
    for (const { formula, inputs } of [
      alone,
      capacityAlongTether({ ground: 2000, links }, "ASD"),
    ]) {
      expectPrinted(formula);
      expect(inputs).toHaveLength(formula.arguments.length);
    }
  });

  const chains = fc.record({
    ground: between(1, 1e5),
    links: fc.dictionary(fc.constantFrom(...linkIds), between(1, 1e5).map(limit)),
  });

  test(`laws (seed ${seed}): LRFD is 1.5 of ASD; a further link never raises`, () => {
    holds(
      fc.property(
        chains,
        fc.constantFrom<LinkId>(...linkIds),
        between(1, 1e5),
        (chain, id, load) => {
          const asd = capacityAlongTether(chain, "ASD");
          const lrfd = capacityAlongTether(chain, "LRFD");
          expect(lrfd.capacity).toBeCloseTo(1.5 * asd.capacity, 6);
          expect(asd.formula.evaluate(...asd.inputs)).toBe(asd.capacity);
          if (chain.links[id]) return;
          const links = { ...chain.links, [id]: limit(load) };
          const more = capacityAlongTether({ ...chain, links }, "ASD");
          expect(more.capacity).toBe(Math.min(asd.capacity, load));
          expect(more.notChecked.length).toBe(asd.notChecked.length - 1);
        },
      ),
    );
  });
});
