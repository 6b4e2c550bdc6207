import {
  type Arc,
  arcByOffset,
  arcHeightAt,
  arcLineCentroid,
  arcPointAt,
  endWallCentroid,
  flatEndArea,
  underArcArea,
  underArcMoment,
  uprightOffset,
} from "@hoopstay/load";
import { describe, expect, test } from "vitest";

const arcs: readonly (readonly [string, Arc])[] = [
  ["a semicircle", arcByOffset(4, 2, 0)],
  ["a flat round arch", arcByOffset(6, 1.5, 0)],
  ["a pointed arch that springs upright", arcByOffset(4, 2.6, uprightOffset.evaluate(4, 2.6))],
  ["a pointed arch that leans in", arcByOffset(5, 2.2, 0.6)],
];

describe("an arc by thin strips", () => {
  test.each(arcs)("%s: through springing and crown", (_, arc) => {
    expect(arcHeightAt(arc, arc.span / 2)).toBeCloseTo(0, 6);
    expect(arcHeightAt(arc, -arc.span / 2)).toBeCloseTo(0, 6);
    expect(arcHeightAt(arc, 0)).toBeCloseTo(arc.rise, 12);
  });

  test.each(arcs)("%s: area and its middle", (_, arc) => {
    const count = 2000;
    let [area, moment] = [0, 0];
    for (let strip = 0; strip < count; strip += 1) {
      // Strips end by the rule of cosines, so that the steep springing is met closely.
      const edge = (place: number) => (arc.span / 2) * Math.cos((Math.PI * place) / count);
      const width = edge(strip) - edge(strip + 1);
      const height = arcHeightAt(arc, (edge(strip) + edge(strip + 1)) / 2);
      area += width * height;
      moment += (width * height * height) / 2;
    }
    const { span, radius, springAngle, crownAngle, c, e } = arc;
    for (const wall of [0, 0.8]) {
      const whole = area + span * wall;
      const about = moment + area * wall + (span * wall * wall) / 2;
      const end = flatEndArea.evaluate(radius, springAngle, crownAngle, c, span, wall);
      const under = underArcArea.evaluate(end, span, wall);
      const first = underArcMoment.evaluate(under, e, radius, springAngle, crownAngle, c);
      const middle = endWallCentroid.evaluate(under, first, span, wall, end);
      expect(end / whole).toBeCloseTo(1, 5);
      expect(middle / (about / whole)).toBeCloseTo(1, 5);
    }
  });

  test.each(arcs)("%s: length and the middle of the line", (_, arc) => {
    const count = 2000;
    let [length, moment] = [0, 0];
    for (let piece = 0; piece < count; piece += 1) {
      const [a, b] = [arcPointAt(arc, piece / count), arcPointAt(arc, (piece + 1) / count)];
      const step = Math.hypot(a.x - b.x, a.z - b.z);
      length += 2 * step;
      moment += step * (a.z + b.z);
    }
    expect(arc.length / length).toBeCloseTo(1, 5);
    expect(arcLineCentroid(arc) / (moment / length)).toBeCloseTo(1, 5);
  });
});
