import { type DrawnHoop, type System, show } from "@hoopstay/core";
import { text } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";

type Point = DrawnHoop["points"][number];

/** What the drawings of the hoop show, in numbers. */
export function hoopNumbers({ points, bars }: DrawnHoop, system: System): string {
  const extreme = (what: string, of: (point: Point) => number, shown: (size: number) => string) => {
    const sizes = points.map(of);
    const most = Math.max(...sizes);
    const point = points[sizes.indexOf(most)];
    return point && most > 0 ? [[what, shown(most), placeWords(point, system)]] : [];
  };
  const moment = (size: number): string => text(show(size, "moment", system));
  const force = (size: number): string => text(show(size, "force", system));
  const rows = [
    ...extreme("Most bending, inner face pulled", (point) => point.moment, moment),
    ...extreme("Most bending, outer face pulled", (point) => -point.moment, moment),
    ...extreme("Most pull along it", (point) => point.thrust, force),
    ...extreme("Most push along it", (point) => -point.thrust, force),
    ...extreme(
      "It moves most",
      ({ dx, dz }) => Math.hypot(dx, dz),
      (size) => text(show(size, "length", system)),
    ),
    ...bars.map((bar, place) => [
      `T${place + 1}: ${tieWords(bar.force)}`,
      bar.force === 0 ? "\u2013" : force(Math.abs(bar.force)),
      `${placeWords(bar.from, system)}, to ${placeWords(bar.to, system)}`,
    ]),
  ];
  return table(
    "The hoop in numbers",
    "The hoop in numbers, for the case drawn.",
    [
      words("What"),
      numbers("How much"),
      words("Where, from the middle of the house on the ground"),
    ],
    rows,
  );
}

const tieWords = (force: number): string => {
  if (force === 0) return "a tie, slack";
  return force > 0 ? "a tie in tension (pulled)" : "a tie in compression (pushed together)";
};

function placeWords({ x, z }: { readonly x: number; readonly z: number }, system: System): string {
  const side =
    Math.abs(x) < 5e-4
      ? "in the middle"
      : `${show(Math.abs(x), "length", system)} ${x < 0 ? "left" : "right"}`;
  return text(`${side}, ${show(z, "length", system)} up`);
}
