import { cite } from "@hoopstay/core";
import type { CatalogueSize } from "./size.ts";

type Row = readonly [outside: string, ...walls: string[]];
type Finish = "CF" | "HF";

/** Square tube: side, walls, mm, in the designation's own digits. */
const squares: readonly (readonly [Finish, "read" | "memory", readonly Row[]])[] = [
  [
    "CF",
    "read",
    [
      ["40", "2.0", "3.0", "4.0"],
      ["50", "3.0", "4.0", "5.0"],
      ["60", "3.0", "4.0"],
      ["80", "3.0", "4.0"],
      ["100", "4.0", "8.0"],
    ],
  ],
  [
    "CF",
    "memory",
    [
      ["50", "2.0"],
      ["60", "5.0"],
      ["80", "5.0"],
      ["100", "3.0", "5.0", "6.0"],
    ],
  ],
  [
    "HF",
    "read",
    [
      ["40", "3.2"],
      ["50", "3.2"],
      ["80", "4.0"],
      ["100", "5.0"],
    ],
  ],
];

/** Round tube: outside diameter, walls, mm. */
const rounds: readonly (readonly [Finish, "read" | "memory", readonly Row[]])[] = [
  [
    "CF",
    "read",
    [
      ["33.7", "3.0"],
      ["42.4", "3.0"],
      ["48.3", "3.0", "4.0"],
      ["60.3", "3.0"],
    ],
  ],
  [
    "CF",
    "memory",
    [
      ["33.7", "2.6"],
      ["42.4", "2.6"],
      ["48.3", "2.6"],
    ],
  ],
  [
    "HF",
    "read",
    [
      ["42.4", "3.2"],
      ["48.3", "3.2"],
      ["60.3", "3.2"],
    ],
  ],
];

const millimetres = (text: string): number => Number(text) / 1000;

const conventionOf = { CF: "EN 10219-2", HF: "EN 10210-2" } as const;

/** Square and round tube: cold formed (CF, EN 10219-2) and hot finished (HF, EN 10210-2). */
export const europeanHollow: readonly CatalogueSize[] = [
  ...squares.flatMap(([finish, grade, rows]) =>
    rows.flatMap(([side, ...walls]) =>
      walls.map((wall) => ({
        name: `${finish}SHS${side}x${side}x${wall}`,
        aliases: finish === "CF" ? [`SHS${side}x${side}x${wall}`] : [],
        shape: {
          kind: "rectangular" as const,
          depth: millimetres(side),
          width: millimetres(side),
          wall: millimetres(wall),
          convention: conventionOf[finish],
        },
        citation: cite("uk-section-lists", `${finish}SHS, dimensions`, grade),
      })),
    ),
  ),
  ...rounds.flatMap(([finish, grade, rows]) =>
    rows.flatMap(([outside, ...walls]) =>
      walls.map((wall) => ({
        name: `${finish}CHS${outside}x${wall}`,
        aliases: finish === "CF" ? [`CHS${outside}x${wall}`] : [],
        shape: {
          kind: "round" as const,
          outside: millimetres(outside),
          wall: millimetres(wall),
          convention: conventionOf[finish],
        },
        citation: cite("uk-section-lists", `${finish}CHS, dimensions`, grade),
      })),
    ),
  ),
];
