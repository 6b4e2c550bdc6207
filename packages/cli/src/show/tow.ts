import { type System, show, type TowSummary } from "@hoopstay/core";
import { forceColumn } from "./force.ts";
import { bullet, wrap } from "./lines.ts";

const mostLoads = 3;

/** The pull it takes to move the house, against what the tractor has. */
export function towLines(tow: TowSummary, system: System): string[] {
  const { available, loads, vehicle } = tow;
  const force = forceColumn(system, [
    available?.high ?? 0,
    ...loads.map(({ starting }) => starting.high),
  ]);
  const range = ({ low, high }: { readonly low: number; readonly high: number }): string =>
    `${force.cell(low)} to ${force.cell(high)}`;
  const slope =
    Math.abs(tow.slope) < 5e-4 ? "" : ` up a slope of ${show(tow.slope, "angle", system, 2)}`;
  const has =
    available === null
      ? "no tractor is entered"
      : `${vehicle ?? "tractor"} has ${range(available)}`;
  return [
    wrap(`Pull to move${slope}, in ${force.symbol} (${has}):`, "  "),
    ...loads.slice(0, mostLoads).map(({ words, starting, running, verdict }) => {
      const said = `${words}: ${range(starting)} to start, ${range(running)} to keep moving`;
      return bullet(verdict === null ? said : `${said}: ${verdict.toUpperCase()}`);
    }),
    ...(tow.runsByItself ? [bullet("On this slope it can run by itself: hold it back.")] : []),
  ];
}
