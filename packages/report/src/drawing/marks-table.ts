import { type PlanMark, type System, show, showMeasured } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";

const kinds: Readonly<Record<PlanMark["kind"], string>> = {
  anchor: "\u25cf anchor",
  ballast: "\u25a3 ballast",
  weight: "\u2a01 centre of weight",
};

/** What the numbers on the plan stand for. */
export function marksTable(marks: readonly PlanMark[], system: System): string {
  if (marks.length === 0) return "<p>No anchors or ballast are entered.</p>";
  const rows = marks.map(({ kind, name, x, y, toward, value }, place) => [
    String(place + 1),
    kinds[kind],
    typed(name),
    `${side(x, ["left", "right"], system)}, ${side(y, ["back", "front"], system)}`,
    kind === "anchor" ? tether(toward) : "\u2013",
    text(showMeasured(value, system)),
  ]);
  return table(
    "Marks on the plan",
    "Marks on the plan, measured from the middle of the house. Arrows show where a slanted tether pulls.",
    [
      words("No."),
      words("Mark"),
      words("Name"),
      words("Place"),
      words("Tether"),
      numbers("Pull or weight"),
    ],
    rows,
  );
}

const side = (value: number, names: readonly [string, string], system: System): string =>
  Math.abs(value) < 5e-4
    ? "middle"
    : `${show(Math.abs(value), "length", system)} ${value < 0 ? names[0] : names[1]}`;

function tether([x, y]: readonly [number, number]): string {
  const parts = [
    Math.abs(y) < 0.02 ? "" : y > 0 ? "front" : "back",
    Math.abs(x) < 0.02 ? "" : x > 0 ? "right" : "left",
  ].filter(Boolean);
  return parts.length === 0 ? "upright" : `pulls ${parts.join(" and ")}`;
}
