import { type DrawingPoint, type Drawings, measured } from "@hoopstay/core";

const [span, rise, springing] = [5.4864, 2.4, 0.45];

/** The arch between two shares of its way, from left to right. */
const arch = (from: number, to: number): DrawingPoint[] =>
  Array.from({ length: 25 }, (_, place) => {
    const angle = Math.PI * (1 - (from + ((to - from) * place) / 24));
    return { x: (span / 2) * Math.cos(angle), z: springing + rise * Math.sin(angle) };
  });

const foot = (side: 1 | -1): DrawingPoint[] => [
  { x: (side * span) / 2, z: 0 },
  { x: (side * span) / 2, z: springing },
];

const anchor = (side: 1 | -1, y: number) => ({
  kind: "anchor" as const,
  name: `screw anchor, ${side < 0 ? "left" : "right"}`,
  x: side * 3,
  y,
  toward: [side * 0.6, y > 3 ? 0.3 : 0] as const,
  value: measured(4450, "force"),
});

/** An 18 by 30 ft house on skids with six screw anchors and one tank. */
export const sampleDrawings = (): Drawings => ({
  sectionLine: [...foot(-1), ...arch(0, 1), ...foot(1).reverse()],
  span,
  rise,
  length: 9.144,
  springing,
  railDepth: 0.0762,
  railWidth: 0.0762,
  railFront: 4.8,
  railBack: 4.8,
  noseFront: 0.4,
  noseBack: 0.4,
  hoopStations: Array.from({ length: 9 }, (_, place) => -4.572 + place * 1.143),
  pressures: {
    title: "Left side up, wind from the left, design speed, inside pushes out",
    zones: [
      { name: "windward strip", line: foot(-1), pressure: 210 },
      { name: "windward quarter", line: arch(0, 0.25), pressure: -95 },
      { name: "centre half", line: arch(0.25, 0.75), pressure: -905 },
      { name: "leeward quarter", line: arch(0.75, 1), pressure: -610 },
      { name: "leeward strip", line: foot(1).reverse(), pressure: -580 },
    ],
  },
  marks: [
    ...[-4.2, 0, 4.2].flatMap((y) => [anchor(-1, y), anchor(1, y)]),
    {
      kind: "ballast",
      name: "water tank",
      x: -1.6,
      y: -3.9,
      toward: [0, 0],
      value: measured(3100, "force"),
    },
    {
      kind: "weight",
      name: "low weight",
      x: -0.1,
      y: -0.2,
      toward: [0, 0],
      value: measured(2900, "force"),
    },
  ],
  frontBearing: 0.6,
});
