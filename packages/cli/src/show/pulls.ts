import type { PullLog, System } from "@hoopstay/core";
import { forceColumn } from "./force.ts";
import { bullet, bullets, leadOf, notSealed, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

type Kind = PullLog["kinds"][number];

/** The pull log: each test and what it counts, what is allowed, what one more buys, what is next. */
export function showPulls(
  { kinds, next }: PullLog,
  names: readonly [house: string, site: string],
  system: System,
): string {
  const lines = [
    leadOf("PULL LOG", names.map(visible)),
    ...(kinds.length === 0 ? ["  No pull tests are in the site file."] : []),
    ...kinds.flatMap((kind) => kindLines(kind, system)),
    ...(next.length === 0 ? [] : ["  Next:", ...bullets(next, system)]),
    notSealed,
  ];
  return `${lines.join("\n")}\n`;
}

function kindLines({ words, tests, rated }: Kind, system: System): string[] {
  const force = forceColumn(system, [
    ...tests.map(({ pull }) => pull),
    ...(rated ? [rated.characteristic, rated.atMean] : []),
  ]);
  const said = (value: number): string => `${force.cell(value)} ${force.symbol}`;
  const allowed = rated
    ? `Allowed: ${said(rated.allowable)} (${rated.route}; ${said(rated.characteristic)} divided by ${rated.factor.toFixed(2)}).`
    : "Allowed: nothing, too few tests count.";
  return [
    wrap(words, "  "),
    ...tests.map(({ date, place, ground, pull, ended, counts, why }) => {
      const counted = counts === null ? "LEFT OUT" : `counts ${said(counts)}`;
      return bullet(`${date}, ${place}, ${ground}: ${said(pull)}, ${ended}; ${counted}: ${why}`);
    }),
    wrap(allowed, "    "),
    ...(rated
      ? [
          wrap(
            `One more test would allow ${said(rated.atMean)} if it comes out at the mean, ${said(rated.atLowest)} at the lowest so far.`,
            "    ",
          ),
        ]
      : []),
  ];
}
