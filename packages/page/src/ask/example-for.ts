import type { System } from "@hoopstay/core";

/** Sizes of parts, where an example of the house's own size would mislead. */
const examples: readonly (readonly [RegExp, Readonly<Record<System, string>>])[] = [
  [/\.(wall|thickness)$/, { us: "0.12 in", si: "3 mm" }],
  [/\.weld\.leg$/, { us: "1/8 in", si: "3 mm" }],
  [/bolts\.diameter$/, { us: "3/8 in", si: "10 mm" }],
  [/bolts\.[a-z_]+$/, { us: "3 in", si: "75 mm" }],
  [/(tube|pipe|shaft)\.(outside|depth|width|diameter)$/, { us: "1.9 in", si: "48 mm" }],
  [/(boards|end_rails)\.width$/, { us: "9.25 in", si: "235 mm" }],
  [/plates\.\d+\.diameter$/, { us: "8 in", si: "200 mm" }],
  [
    /(^hoops\.leg|noses\.(front|back)|^stubs\.length|splices\.(length|width))$/,
    { us: "12 in", si: "300 mm" },
  ],
  [/^wind\.speed$/, { us: "105 mph", si: "47 m/s" }],
];

/** An example of what may be typed for a key. */
export const exampleFor = (key: string, usual: string, system: System): string =>
  examples.find(([pattern]) => pattern.test(key))?.[1][system] ?? usual;
