import { pointOnLine } from "@hoopstay/frame";
import { caseStride, hoopLineLoad, hoopTributaries } from "@hoopstay/load";
import { describe, expect, test } from "vitest";
import { context, evaluation, house } from "./example-chain.ts";

const { runs, cases, answers, hoopPlaces } = context;
const { line, bounds } = runs.outline;
const { span, hoopDiameter } = house.lines;
const lineLoads = hoopTributaries(evaluation.shell, hoopPlaces).map(({ from, to }) =>
  hoopLineLoad.evaluate(1, to - from, span, hoopDiameter),
);

/** Force of a pressure of one on a stretch of the hoop: normal to its chord, any curve. */
function onStretch(stretch: number): readonly [x: number, z: number] {
  const from = pointOnLine(line, bounds[stretch] as number);
  const to = pointOnLine(line, bounds[stretch + 1] as number);
  // Pressure toward the surface pushes the left wall to +x and the crown down.
  return [to.z - from.z, -(to.x - from.x)];
}

const unit = Array.from({ length: bounds.length - 1 }, (_, stretch) => onStretch(stretch));

describe("the wind on every hoop stands in balance with its feet, whatever run computed it", () => {
  const ofRun = [...new Set(answers.map(({ run }) => run))];
  test.each(ofRun.map((run) => [`${run.words}${run.bound ? ", a bound" : ""}`, run] as const))(
    "%s",
    (_, run) => {
      const some = answers.filter((answer) => answer.run === run);
      expect(some.length).toBeGreaterThan(cases.length);
      for (const { wind, windCase, hoop } of some) {
        const own = windCase.stretches[hoop] ?? windCase.stretches[0] ?? [];
        const width = lineLoads[hoop] as number;
        const sum = (axis: 0 | 1): number =>
          own.reduce((total, value, at) => total + value * width * (unit[at]?.[axis] ?? 0), 0);
        const feet = wind.response;
        const x = sum(0) + windCase.push * line.length + (feet[0] as number) + (feet[3] as number);
        const z = sum(1) + (feet[1] as number) + (feet[4] as number);
        const size = own.reduce((most, value) => Math.max(most, Math.abs(value)), 0) * width;
        const scale = size * line.length + Math.abs(windCase.push) * line.length;
        expect(Math.abs(x)).toBeLessThanOrEqual(1e-9 * scale + 1e-12);
        expect(Math.abs(z)).toBeLessThanOrEqual(1e-9 * scale + 1e-12);
      }
    },
  );
});

test("weight on the hoops hangs on their feet in full", () => {
  for (const { dead } of answers) {
    const feet = (dead.response[1] as number) + (dead.response[4] as number);
    expect(feet).toBeCloseTo(line.length, 6);
  }
});

test("the uplift of all hoops is that of the whole-house check, wind across, film on", () => {
  const [pinned] = runs.runs;
  let looked = 0;
  for (const windCase of cases) {
    const across = windCase.direction === "+x" || windCase.direction === "-x";
    if (!windCase.filmOn || !across || windCase.form !== "G C_p") continue;
    for (const [set, index] of windCase.sets) {
      const whole = set.table.components[index * caseStride + 2] as number;
      let hoops = 0;
      hoopPlaces.forEach((_, hoop) => {
        const { response } = (pinned as (typeof runs.runs)[number]).wind(windCase, hoop);
        hoops -= (response[1] as number) + (response[4] as number);
      });
      expect(hoops / whole).toBeCloseTo(1, 2);
      looked += 1;
    }
  }
  expect(looked).toBeGreaterThan(10);
});
