import type { FoundDesign } from "@hoopstay/core";
import { stockTube, tubeName } from "../../compare/stock/stock-tube.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { TubeInput } from "../../schema/tube.ts";
import type { Design } from "../design/design.ts";
import { designInput } from "../design/design-input.ts";

/** A tube as it would be typed into a house file. */
function typedTube(input: TubeInput): string {
  const parts = Object.entries(input).flatMap(([key, value]) => {
    if (value === undefined) return [];
    const text = typeof value === "object" ? value.text : value === true ? "yes" : String(value);
    return [`${key}: ${text}`];
  });
  return `{ ${parts.join(", ")} }`;
}

/** A design in words: what its hoops and rails are, and its anchors where they differ. */
export function designWords(
  { hoop, count, rail, layout }: Design,
  kind: string | undefined,
): string {
  const anchors =
    layout.perRail === null
      ? ""
      : `; on each rail ${layout.perRail} anchors (${kind ?? "as fitted"})`;
  return `${count} hoops of ${hoop.name}; rails ${rail.name}${anchors}`;
}

/** Today's hoops and rails in the same words. */
export const todayWords = ({ hoops, rails }: HouseInput, count: number): string =>
  `${count} hoops of ${tubeName(hoops.tube)}; rails ${tubeName(rails.tube)}`;

/** What is typed for a key that has to go. */
const takenOut = "null";

/** The keys of the house file that a design changes, with what would stand there. */
export function designChanges(
  input: HouseInput,
  hoopsToday: number,
  design: Design,
  kind: string | undefined,
): FoundDesign["changes"] {
  const { hoop, count, rail, layout } = design;
  const changes: { key: string; to: string }[] = [];
  const tube = (key: string, today: TubeInput, now: TubeInput): void => {
    if (stockTube(today).id !== stockTube(now).id) changes.push({ key, to: typedTube(now) });
  };
  tube("hoops.tube", input.hoops.tube, hoop.input);
  tube("rails.tube", input.rails.tube, rail.input);
  const changed = designInput(input, hoopsToday, design);
  if (count !== hoopsToday) {
    if (input.hoops.spacing) changes.push({ key: "hoops.spacing", to: takenOut });
    changes.push({ key: "hoops.count", to: String(count) });
    for (const key of ["collar_ties", "truss_bars", "knee_braces"] as const) {
      const now = changed[key]?.count;
      if (now !== undefined && now !== input[key]?.count) {
        changes.push({ key: `${key}.count`, to: String(now) });
      }
    }
  }
  if (layout.perRail !== null) {
    const to = `${layout.perRail} of kind ${kind ?? ""} on each rail, evenly, the first ones 1 ft (0.3 m) from its ends`;
    changes.push({ key: "anchors", to });
  }
  return changes;
}
