import type { Step } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import { theoryCapacity } from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  anchors,
  dry,
  firm,
  given,
  level,
  loose,
  seed,
  sixInch,
  slanted,
  soilValues,
  stabiliser,
  stake,
  state,
  upward,
  wet,
} from "./anchor-examples.ts";

const agrees = (step: Step): void => {
  expect(evaluateAgain(step).agrees, `${step.formula.id}: ${step.formula.expression}`).toBe(true);
};

describe("the trail of an anchor", () => {
  test("every step's printed expression gives its value, for every kind and ground", () => {
    const ids = new Set<string>();
    const pull = fc.constantFrom(upward, level, slanted(0.7), { fromShaft: 0, aboveGround: 0.5 });
    fc.assert(
      fc.property(anchors, soilValues, state, pull, (anchor, values, ground, direction) => {
        let trail: readonly Step[] = [];
        try {
          const capacity = theoryCapacity(anchor, given(values, ground), direction, {
            testedHere: false,
            spacing: 0.3,
          });
          trail = capacity.rated ? capacity.trail : [];
        } catch {
          return;
        }
        for (const step of trail) {
          agrees(step);
          ids.add(step.formula.id);
        }
      }),
      { seed, numRuns: 1500 },
    );
    expect([...ids].sort()).toEqual(
      [
        "anchor-allowable",
        "assumed-yield",
        "breakout-factor-meyerhof-adams",
        "breakout-factor-vesic",
        "buoyant-unit-weight",
        "clay-breakout-factor",
        "clay-start",
        "deadman-capacity",
        "deadman-power",
        "deadman-soil-factor",
        "embedment-ratio",
        "equal-area-square",
        "group-factor",
        "grouped-pull",
        "helix-area",
        "helix-sum",
        "lateral-allowable",
        "lateral-clay",
        "lateral-sand",
        "lateral-shaft-clay",
        "lateral-shaft-sand",
        "lower-breakout-factor",
        "lower-force",
        "moment-cube-sand",
        "military-table-factor",
        "moment-left",
        "passive-coefficient",
        "picket-set",
        "picket-set-wet",
        "picket-wet-factor",
        "plate-uplift-clay",
        "plate-uplift-sand",
        "sand-reaction-rate",
        "shaft-allowable-moment",
        "shaft-plastic-moment",
        "slanted-pull",
        "soil-c_g",
        "soil-gamma",
        "soil-phi",
        "stabiliser-clay",
        "stabiliser-clay-used",
        "stabiliser-in-bending",
        "stabiliser-sand",
        "stabiliser-sand-depth",
        "straight-line-interpolation",
        "theory-factor",
        "vesic-growth",
        "water-unit-weight",
        "wet-shear-strength",
        "wet-strength-factor",
      ].sort(),
    );
  });

  test("every input of a step is given or is the value of an earlier step", () => {
    const withPlate = { ...sixInch, stabiliser };
    const cases = [
      [sixInch, given(loose, wet), upward],
      [withPlate, given(firm, wet), slanted(0.7)],
      [withPlate, given(loose, dry), slanted(0.7)],
      [stake, given(firm, wet), level],
    ] as const;
    for (const [anchor, soil, pull] of cases) {
      const capacity = theoryCapacity(anchor, soil, pull);
      if (!capacity.rated) throw new Error(capacity.reason);
      const { trail } = capacity;
      const last = trail.at(-1) as Step;
      expect(last.value).toBe(capacity.allowable);
      const found = trail.filter((step) => step.formula.measure === "force");
      for (const step of found.slice(0, -1)) {
        const later = trail.slice(trail.indexOf(step) + 1).flatMap((next) => next.inputs);
        const ends = step.value === capacity.ultimate || step.symbol === "H_n";
        expect(ends || later.includes(step.value), step.formula.id).toBe(true);
      }
    }
  });
});
