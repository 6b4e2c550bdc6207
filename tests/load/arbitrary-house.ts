import {
  type CaseTable,
  type CentreLines,
  type Covering,
  caseStride,
  type EndsPresent,
  type Obstacle,
  roofSetsOf,
  shellOf,
  type WindBody,
  type WindCase,
  type WindSurfaces,
  windSurfaces,
} from "@hoopstay/load";
import fc from "fast-check";

/** Seed of every law of loads, so that a failure repeats. */
export const seed = 71_622;

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const holds = <Values extends [unknown, ...unknown[]]>(
  law: fc.IProperty<Values>,
  numRuns = 200,
): void => {
  fc.assert(law, { seed, numRuns });
};

/** Round arches up to the semicircle and pointed ones beyond it, on rails or on straight legs. */
export const centreLines: fc.Arbitrary<CentreLines> = fc
  .record({
    span: between(3, 10),
    riseRatio: between(0.1, 0.6),
    length: between(3, 30),
    leg: between(0, 0.8),
    hoopDiameter: between(0.02, 0.08),
    hoopCount: fc.integer({ min: 2, max: 30 }),
  })
  .map(({ riseRatio, leg, ...plain }) => ({
    ...plain,
    shape: riseRatio > 0.5 ? ("pointed" as const) : ("round" as const),
    rise: riseRatio * plain.span,
    springing: leg * riseRatio * plain.span,
  }));

const obstacle: fc.Arbitrary<Obstacle> = fc.record({
  x: between(-5, 5),
  y: between(-10, 10),
  z: between(0.1, 2),
  areaAcross: between(0, 3),
  areaAlong: between(0, 3),
  outside: fc.boolean(),
});

export const body: fc.Arbitrary<WindBody> = fc
  .record({
    lines: centreLines,
    obstacles: fc.array(obstacle, { maxLength: 2 }),
    area: between(1, 20),
    y: between(-1, 1),
  })
  .map(({ lines, obstacles, area, y }) => ({
    shell: shellOf(lines),
    obstacles,
    frame: { dragArea: area, x: 0, y, z: lines.rise },
  }));

export const ends: fc.Arbitrary<EndsPresent> = fc.record({
  front: fc.boolean(),
  back: fc.boolean(),
});
export const covering: fc.Arbitrary<Covering> = fc.constantFrom("covered", "open", "bare");
export const insideCoefficients = fc.constantFrom([0], [0.18, -0.18], [0.18, -0.18, 0.55, -0.55]);

export const surfacesOf = (of: WindBody, over: Covering, present: EndsPresent): WindSurfaces =>
  windSurfaces(of, over, present, roofSetsOf(of, over));

export const componentsOf = ({ components }: CaseTable, index: number): number[] => [
  ...components.slice(index * caseStride, (index + 1) * caseStride),
];

/** What a case is, whatever its place in the table; `flip` names its mirror image. */
export function nameOf(one: WindCase, flip: { across?: boolean; along?: boolean } = {}): string {
  const { number, across, along, vertical, inside, twist } = one;
  const sense = (of: typeof across, turned = false) => (of ? of.sense * (turned ? -1 : 1) : 0);
  const set = (of: typeof across) => `${of?.set?.id ?? "-"}/${of?.set?.reading ?? "-"}`;
  const turned = flip.across || flip.along ? -twist : twist;
  const parts: (string | number)[] = [number, vertical, inside, turned];
  parts.push(sense(across, flip.across), set(across), sense(along, flip.along), set(along));
  return parts.map((part) => (part === 0 ? 0 : part)).join(" "); // no minus nought
}
