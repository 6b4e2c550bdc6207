import { type AnchorRow, type System, show, showPlace } from "@hoopstay/core";
import { forceColumn } from "./force.ts";
import { column, rightColumn } from "./lines.ts";

/** Anchors as lines of a table, in the order given, each with its worst pull. */
export function anchorLines(anchors: readonly AnchorRow[], system: System): string[] {
  const force = forceColumn(
    system,
    anchors.flatMap(({ pull, proof }) => [pull, proof]),
  );
  const lineOf = (
    number: string,
    name: string,
    place: string,
    tether: string,
    pull: string,
    proof: string,
  ): string =>
    [
      `  ${number.padStart(2)} `,
      column(name, 6),
      column(place, 20),
      column(tether, 26),
      rightColumn(pull, 8),
      rightColumn(proof, 8),
    ]
      .join("")
      .trimEnd();
  const rows = anchors.map((one, place) => {
    const { name, lead, angle, pull, proof, ratio } = one;
    return lineOf(
      String(place + 1),
      name,
      showPlace(one, system),
      `${lead}, ${show(angle, "angle", system, 2)}`,
      `${ratio > 1 ? "! " : ""}${force.cell(pull)}`,
      force.cell(proof),
    );
  });
  const over = anchors.some(({ ratio }) => ratio > 1);
  return [
    lineOf("", "anchor", "place", "tether", `pull, ${force.symbol}`, "prove to"),
    ...rows,
    ...(over ? ["  ! more than this anchor may carry"] : []),
  ];
}
