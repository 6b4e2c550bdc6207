import { Refusal } from "@hoopstay/core";
import {
  type Anchor,
  type Capacity,
  type PresumedSoil,
  type Pull,
  type Soil,
  soilClasses,
  theoryCapacity,
} from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  anchors,
  clay,
  dry,
  given,
  level,
  oneHelix,
  pulls,
  sand,
  seed,
  severalHelices,
  slanted,
  soilValues,
  stabilisers,
  stakes,
  state,
  upward,
  wet,
} from "./anchor-examples.ts";

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 400 });

/** Two numbers closer than a double can tell may round the wrong way. */
const rounding = 1 - 1e-12;

/** Allowable pull, or null where none is given; a refusal fails the law. */
const allowable = (anchor: Anchor, soil: Soil, pull: Pull): number | null => {
  const capacity = theoryCapacity(anchor, soil, pull);
  return capacity.rated ? capacity.allowable : null;
};

/** Law: the second is at least the first wherever both are rated. */
const notLess = (first: number | null, second: number | null): void => {
  if (first === null || second === null) return;
  expect(second).toBeGreaterThanOrEqual(first * rounding);
};

const classSoil = (soilClass: PresumedSoil["soilClass"], likeness: PresumedSoil["likeness"]) =>
  ({ basis: "presumptive", soilClass, likeness, measured: "wet", state: wet }) as const;

const share = fc.double({ min: 1, max: 1.6, noNaN: true });

describe("laws of anchors by theory", () => {
  test("a number is finite and above zero, or it is a typed need, or a coded refusal", () => {
    let ratedKinds = new Set<string>();
    holds(
      fc.property(anchors, soilValues, state, pulls, (anchor, values, ground, pull) => {
        let capacity: Capacity;
        try {
          capacity = theoryCapacity(anchor, given(values, ground), pull);
        } catch (refusal) {
          expect(refusal).toBeInstanceOf(Refusal);
          return;
        }
        if (!capacity.rated) {
          expect(capacity.reason.length).toBeGreaterThan(20);
          return;
        }
        ratedKinds = ratedKinds.add(anchor.kind);
        for (const value of [capacity.allowable, capacity.ultimate, capacity.enResistance]) {
          expect(Number.isFinite(value)).toBe(true);
          expect(value).toBeGreaterThan(0);
        }
        expect(capacity.lrfdStrength).toBe(1.5 * capacity.allowable);
        expect(capacity.allowable).toBeLessThan(capacity.ultimate);
        expect(capacity.trail.at(-1)?.value).toBe(capacity.allowable);
      }),
    );
    expect([...ratedKinds].sort()).toEqual(
      ["deadman", "driven plate", "picket set", "screw", "stake"].sort(),
    );
  });

  test("any numbers give a finite answer or a coded refusal", () => {
    const any = fc.double();
    const shaft = fc.record({ diameter: any, plasticModulus: any, pullHeight: any });
    const wild: fc.Arbitrary<Anchor> = fc.oneof(
      fc.record({
        kind: fc.constant("screw" as const),
        helices: fc.array(fc.record({ diameter: any, depth: any }), { maxLength: 3 }),
        shaft,
        stabiliser: fc.record({ breadth: any, top: any, height: any }),
      }),
      fc.record({ kind: fc.constant("stake" as const), depth: any, shaft }),
      fc.record({ kind: fc.constant("driven plate" as const), area: any, depth: any }),
      fc.record({
        kind: fc.constant("deadman" as const),
        body: fc.constantFrom("timber" as const, "log" as const),
        face: any,
        length: any,
        depth: any,
      }),
    );
    holds(
      fc.property(wild, soilValues, state, pulls, (anchor, values, ground, pull) => {
        try {
          const capacity = theoryCapacity(anchor, given(values, ground), pull);
          if (capacity.rated) expect(Number.isFinite(capacity.allowable)).toBe(true);
        } catch (refusal) {
          expect(refusal).toBeInstanceOf(Refusal);
        }
      }),
    );
  });

  test("a better class of the same kind of soil never holds less", () => {
    const order = soilClasses.filter((one) => one !== "1" && one !== "5").toReversed();
    holds(
      fc.property(
        anchors,
        fc.constantFrom("sand", "clay", "unknown"),
        pulls,
        (anchor, likeness, pull) => {
          let before: number | null = null;
          for (const soilClass of order) {
            const now = rateOrNull(anchor, classSoil(soilClass, likeness as "sand"), pull);
            notLess(before, now);
            before = now ?? before;
          }
        },
      ),
    );
  });

  test("two helices of a reach that grew with phi: better sand held less (found by the law)", () => {
    const shaft = { diameter: 0.012, plasticModulus: 8.64e-8, pullHeight: 0 };
    const helices = [
      { diameter: 0.08, depth: 0.5 },
      { diameter: 0.08, depth: 0.835999999664 },
    ];
    const anchor = { kind: "screw", helices, shaft } as const;
    notLess(
      allowable(anchor, classSoil("4B", "sand"), upward),
      allowable(anchor, classSoil("4A", "sand"), upward),
    );
  });

  test("a larger friction angle, strength or unit weight never holds less", () => {
    holds(
      fc.property(oneHelix, sand, share, state, (anchor, values, k, ground) => {
        const angle = Math.min(k * values.frictionAngle, Math.PI / 4);
        const better = { ...values, frictionAngle: angle };
        notLess(
          allowable(anchor, given(values, ground), upward),
          allowable(anchor, given(better, ground), upward),
        );
        notLess(
          allowable(anchor, given(values, dry), slanted(0.6)),
          allowable(anchor, given(better, dry), slanted(0.6)),
        );
      }),
    );
    holds(
      fc.property(oneHelix, clay, share, state, (anchor, values, k, ground) => {
        const better = { ...values, shearStrength: k * values.shearStrength };
        notLess(
          allowable(anchor, given(values, ground), upward),
          allowable(anchor, given(better, ground), upward),
        );
      }),
    );
  });

  test("the whole anchor deeper never holds less straight up", () => {
    holds(
      fc.property(severalHelices, soilValues, state, share, (anchor, values, ground, k) => {
        const helices = anchor.helices.map((helix) => ({ ...helix, depth: helix.depth + k - 1 }));
        notLess(
          allowable(anchor, given(values, ground), upward),
          allowable({ ...anchor, helices }, given(values, ground), upward),
        );
      }),
    );
  });

  test("a larger single plate never holds less straight up", () => {
    holds(
      fc.property(oneHelix, soilValues, state, share, (anchor, values, ground, k) => {
        const helices = anchor.helices.map((helix) => ({
          ...helix,
          diameter: k * helix.diameter,
        }));
        fc.pre(helices.every((helix) => helix.depth >= helix.diameter));
        notLess(
          allowable(anchor, given(values, ground), upward),
          allowable({ ...anchor, helices }, given(values, ground), upward),
        );
      }),
    );
  });

  test("several helices hold at most the sum of each alone, and at least the best alone", () => {
    holds(
      fc.property(severalHelices, soilValues, state, (anchor, values, ground) => {
        const soil = given(values, ground);
        const all = allowable(anchor, soil, upward) as number;
        const alone = anchor.helices.map(
          (helix) => allowable({ ...anchor, helices: [helix] }, soil, upward) as number,
        );
        expect(all).toBeLessThanOrEqual(alone.reduce((sum, one) => sum + one, 0) / rounding);
        expect(all).toBeGreaterThanOrEqual(Math.max(...alone) * rounding);
      }),
    );
  });

  test("wet or frozen never holds more than dry", () => {
    holds(
      fc.property(anchors, soilValues, pulls, (anchor, values, pull) => {
        const parched = rateOrNull(anchor, given(values, dry), pull);
        const soaked = rateOrNull(anchor, given(values, wet), pull);
        notLess(soaked, parched);
        expect(rateOrNull(anchor, given(values, { wetness: "frozen" }), pull)).toBe(soaked);
      }),
    );
  });

  test("a deeper or stronger stake never holds less; a higher pull never more", () => {
    holds(
      fc.property(stakes, soilValues, state, share, (stake, values, ground, k) => {
        const soil = given(values, ground);
        const now = theoryCapacity(stake, soil, level);
        const { shaft } = stake;
        const deeper = theoryCapacity({ ...stake, depth: k * stake.depth }, soil, level);
        if (!now.rated || !deeper.rated) throw new Error("a stake pulled square is rated");
        const raised = { ...shaft, pullHeight: shaft.pullHeight + k - 1 };
        const higher = allowable({ ...stake, shaft: raised }, soil, level);
        notLess(higher, now.allowable);
        notLess(now.ultimate, deeper.ultimate);
        notLess(now.allowable, deeper.allowable);
        const stronger = { ...shaft, plasticModulus: k * shaft.plasticModulus };
        notLess(now.allowable, allowable({ ...stake, shaft: stronger }, soil, level));
      }),
    );
  });

  test("a stabiliser never lowers what a slanted pull may be", () => {
    holds(
      fc.property(oneHelix, stabilisers, soilValues, state, (anchor, plate, values, ground) => {
        const soil = given(values, ground);
        const pull = slanted(0.7);
        const bare = allowable(anchor, soil, pull);
        notLess(bare, allowable({ ...anchor, stabiliser: plate }, soil, pull));
      }),
    );
  });

  test("a slanted pull exceeds neither capacity along its own axis", () => {
    holds(
      fc.property(
        oneHelix,
        stabilisers,
        soilValues,
        state,
        fc.double({ min: 0.02, max: Math.PI / 2 - 0.001, noNaN: true }),
        (anchor, plate, values, ground, angle) => {
          const soil = given(values, ground);
          const fixed = { ...anchor, stabiliser: plate };
          const pull = allowable(fixed, soil, slanted(angle)) as number;
          const along = allowable(fixed, soil, upward) as number;
          const across = allowable(fixed, soil, slanted(Math.PI / 2)) as number;
          expect(pull * Math.cos(angle)).toBeLessThanOrEqual(along / rounding);
          expect(pull * Math.sin(angle)).toBeLessThanOrEqual(across / rounding);
          const used = (pull * Math.cos(angle)) / along + (pull * Math.sin(angle)) / across;
          expect(used).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("lengths k times as large in dry sand hold k3 times as much", () => {
    holds(
      fc.property(oneHelix, sand, share, (anchor, values, k) => {
        const helices = anchor.helices.map(({ diameter, depth }) => ({
          diameter: k * diameter,
          depth: k * depth,
        }));
        const shaft = { ...anchor.shaft, diameter: k * anchor.shaft.diameter };
        const soil = given(values, dry);
        const small = allowable(anchor, soil, upward) as number;
        const large = allowable({ ...anchor, helices, shaft }, soil, upward) as number;
        expect(large / small / k ** 3).toBeCloseTo(1, 9);
      }),
    );
  });
});

/** Allowable pull, null where it is not rated or refused. */
function rateOrNull(anchor: Anchor, soil: Soil, pull: Pull): number | null {
  try {
    return allowable(anchor, soil, pull);
  } catch (refusal) {
    expect(refusal).toBeInstanceOf(Refusal);
    return null;
  }
}
