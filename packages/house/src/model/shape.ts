import {
  arcCentreHeight,
  arcRadius,
  type CentreLines,
  highestRiseRatio,
  uprightOffset,
} from "@hoopstay/load";
import type { Tube } from "@hoopstay/section";
import type { PathComplaint } from "../read/complaints.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Assumptions } from "./assumption.ts";

/** Least rise over span: flatter, its radius loses what is worked out of it in rounding. */
const flattest = 0.01;
/** Of a span: an arc of greater radius is straight, and its sizes are lost in rounding. */
const straightest = 15;

export interface HouseShape {
  readonly lines: CentreLines;
  readonly spacing: number;
  readonly leg: number;
  readonly shoulder: number;
  readonly findings: readonly string[];
}

/** Hoop shape, springing height and hoop count, or the complaints about them. */
export function shapeOf(
  input: HouseInput,
  assumed: Assumptions,
  complaints: PathComplaint[],
  railDepth: number,
  hoopTube: Tube | undefined,
): HouseShape | undefined {
  const before = complaints.length;
  const { hoops } = input;
  const [span, rise, length] = [hoops.span.value, hoops.rise.value, hoops.length.value];
  const count = hoopCount(input, complaints);
  arcComplaints(input, complaints);
  const diameter = hoopTube?.kind === "round" ? hoopTube.outside : 0;
  const ratio = (rise + diameter / 2) / (span + diameter);
  const given = `${hoops.rise.text} on a span of ${hoops.span.text}`;
  if (ratio > highestRiseRatio + 1e-9) {
    complaints.push({
      path: ["hoops", "rise"],
      code: "rise-outside-table",
      given,
      expected: "rise over span up to 0.6: the arched-roof table ends there",
      mend: "This house is outside what the standard's table covers; ask a licensed engineer.",
    });
  }
  if (rise < flattest * span) {
    complaints.push({
      path: ["hoops", "rise"],
      code: "shape-outside",
      given,
      expected: "a rise of at least a hundredth of the span",
      mend: "Rise is from the springing up to the crown, on the tube's centre line.",
    });
  }
  const leg = assumed.take(hoops.leg?.value, 0, "hoops.leg", "none", "no straight leg entered");
  const shoulder = assumed.take(
    input.stubs.shoulder?.value,
    0,
    "stubs.shoulder",
    "none",
    "hoop stands on the rail",
  );
  if (complaints.length > before) return undefined;
  const findings =
    hoops.shape === "round" && rise < span / 2 - 1e-9
      ? ["The hoop is flatter than a half circle: on upright stubs it has a kink where it springs."]
      : [];
  const offset = hoops.centre_offset?.value;
  return {
    lines: {
      shape: hoops.shape,
      span,
      rise,
      length,
      springing: railDepth + shoulder + leg,
      hoopDiameter: diameter,
      hoopCount: count,
      ...(offset === undefined ? {} : { centreOffset: offset }),
    },
    spacing: length / (count - 1),
    leg,
    shoulder,
    findings,
  };
}

function hoopCount(input: HouseInput, complaints: PathComplaint[]): number {
  const { spacing, count, length } = input.hoops;
  if (count !== undefined && spacing === undefined) return count;
  if (spacing === undefined) {
    complaints.push({
      path: ["hoops", "spacing"],
      code: "key-missing",
      expected: "spacing or count",
      mend: "Give the distance from hoop to hoop, or the number of hoops.",
    });
    return 2;
  }
  const bays = Math.round(length.value / spacing.value);
  const fits = bays >= 1 && Math.abs(bays * spacing.value - length.value) < 0.01 * spacing.value;
  if (!fits || (count !== undefined && count !== bays + 1)) {
    complaints.push({
      path: ["hoops", "spacing"],
      code: "sizes-disagree",
      given: `${spacing.text} in ${length.text}${count === undefined ? "" : `, count ${count}`}`,
      expected: "a spacing that divides the length into whole bays",
      mend: `Give count (the number of hoops) instead of spacing; ${bays + 1} hoops come nearest.`,
    });
  }
  return bays + 1;
}

function arcComplaints(input: HouseInput, complaints: PathComplaint[]): void {
  const { shape, span, rise, centre_offset: offset } = input.hoops;
  const half = span.value / 2;
  const given = `${shape}, rise ${rise.text}, span ${span.text}`;
  if (shape === "round" && (rise.value > half + 1e-9 || offset)) {
    complaints.push({
      path: ["hoops", "shape"],
      code: "shape-outside",
      given,
      expected: "a round hoop no higher than half its span, without centre_offset",
      mend: "A hoop wider than its feet is not computed. Is it pointed, or has it straight legs (leg)?",
    });
  }
  if (shape === "pointed" && !offset && rise.value < half - 1e-9) {
    complaints.push({
      path: ["hoops", "shape"],
      code: "shape-outside",
      given,
      expected: "a pointed hoop higher than half its span, or its centre_offset",
      mend: "Give centre_offset: how far beyond the middle each arc's centre lies.",
    });
  }
  if (shape === "pointed" && offset) {
    const e = arcCentreHeight.evaluate(span.value, rise.value, offset.value);
    if (arcRadius.evaluate(span.value, offset.value, e) > straightest * span.value) {
      complaints.push({
        path: ["hoops", "centre_offset"],
        code: "shape-outside",
        given: `${offset.text}, ${given}`,
        expected: "arcs with a radius of at most fifteen times the span",
        mend: "Arcs as flat as that are straight rafters, which this program does not check.",
      });
    }
    if (e > 1e-9) {
      complaints.push({
        path: ["hoops", "centre_offset"],
        code: "shape-outside",
        given: `${offset.text}, ${given}`,
        expected: "arcs that do not bulge beyond their feet",
        mend: `With this rise and span the offset is at least ${uprightOffset.evaluate(span.value, rise.value).toFixed(3)} m.`,
      });
    }
  }
}
