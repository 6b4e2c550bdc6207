import type { LinkNotChecked, Words } from "@hoopstay/core";
import type { ChainContext } from "../context.ts";
import { designDemand } from "../demand.ts";
import type { LinkRow, LinkRows } from "../link.ts";
import { PurlinKind } from "./purlin-kind.ts";
import type { PurlinLine } from "./purlin-lines.ts";

/** Thrust and pull of one kind of line with what the cover presses on it, and its clamps. */
export function purlinRows(
  context: ChainContext,
  what: PurlinLine["what"],
  lines: readonly PurlinLine[],
): LinkRows {
  const [first] = lines;
  if (!first) return { rows: [], notChecked: [], findings: [] };
  const kind = new PurlinKind(context, what, lines, first.part);
  const { name, strengths } = kind;
  const rows: LinkRow[] = [];
  const notChecked: LinkNotChecked[] = [];
  const bent = kind.rows();
  if (typeof bent === "string") {
    notChecked.push({ link: "ridge-line", words: `the ${name}`, why: bent, demand: null });
  } else rows.push(...bent);
  const clamps = kind.clamps();
  if (first.part.slip !== null) rows.push(...clamps);
  else {
    notChecked.push({
      link: "ridge-line",
      words: `clamps of the ${name} on the end hoops`,
      why: "what a clamp holds along the purlin is not entered (clamps.slip)",
      demand: designDemand(context, clamps),
    });
  }
  const findings = strengths.findings.map((finding): Words => [`The ${name}: ${finding}.`]);
  return { rows, notChecked, findings: [...findings, ...kind.leastPressure()] };
}
