import { type Drawings, type DrawnHoop, type System, show } from "@hoopstay/core";
import { apart, type Wanted } from "../drawing/apart.ts";
import type { Spot } from "../drawing/svg.ts";
import { typed } from "../html/escape.ts";
import { across, peaksOf } from "./diagram.ts";
import { hoopNumbers } from "./hoop-numbers.ts";
import { hoopShape } from "./hoop-shape.ts";
import { barLine, hoopStage, type Stage, staged, stageWidth } from "./hoop-stage.ts";

/** The hoop under its governing case: bending, thrust with its ties, and how it bends. */
export function hoopDrawings(hoop: DrawnHoop, drawings: Drawings, system: System): string {
  if (hoop.points.length === 0) return `<p>${typed(hoop.title)}.</p>`;
  const stage = hoopStage(hoop, drawings);
  return `<p>${typed(hoop.title)}. The hoop is drawn to one scale both ways, seen from the back; what is drawn
along it has a scale of its own. The table has the numbers.</p>
<div class="row">${bending(hoop, stage, system)}
${thrust(hoop, stage, system)}
${hoopShape(hoop, stage, system)}
${hoopNumbers(hoop, system)}</div>`;
}

/** Drawn on the side that is pulled. */
function bending({ points, bars }: DrawnHoop, stage: Stage, system: System): string {
  const moments = points.map(({ moment }) => moment);
  const outside = moments.map((moment) => -moment);
  const { tips, markup } = across(stage.stations, outside);
  const labels = peaksOf(outside).map(({ place, value }) =>
    tipLabel(stage, tips, place, Math.sign(value), show(Math.abs(value), "moment", system)),
  );
  return staged(
    "hoop-bending",
    "Bending of the hoop, drawn on the side that is pulled",
    "The shape beside the hoop is as wide as the bending moment there; it lies inside where the inner face is pulled, outside where the outer face is.",
    stage,
    [markup, ...bars.map((bar) => barLine(bar, stage)), apart(labels, stageWidth)],
  );
}

/** Pull outside the hoop, push inside it, and the force of every tie. */
function thrust({ points, bars }: DrawnHoop, stage: Stage, system: System): string {
  const forces = points.map((point) => point.thrust);
  const { tips, markup } = across(stage.stations, forces);
  const ends = [0, forces.length - 1].map((place) => ({ place, value: forces[place] ?? 0 }));
  const near = Math.max(2, forces.length / 8);
  const peaks = peaksOf(forces).filter(({ place }) =>
    ends.every((end) => Math.abs(end.place - place) > near),
  );
  const labels = [
    ...peaks.map(({ place, value }) =>
      tipLabel(stage, tips, place, Math.sign(value), forceWords(value, system)),
    ),
    ...ends.map(({ place, value }): Wanted => {
      const { x, y } = stage.stations[place]?.spot ?? { x: 0, y: 0 };
      return { spot: { x, y: y + 19 }, words: forceWords(value, system), side: 0 };
    }),
  ];
  const ties = bars.map(({ from, to, force }, place): Wanted => {
    const [one, other] = [stage.spotOf(from), stage.spotOf(to)];
    const middle = (one.x + other.x) / 2;
    const side = Math.abs(middle - stageWidth / 2) < 20 ? 0 : stageWidth / 2 - middle;
    const spot = { x: middle + 5 * Math.sign(side), y: (one.y + other.y) / 2 - 4 };
    return { spot, words: `T${place + 1} ${forceWords(force, system)}`, side };
  });
  return staged(
    "hoop-thrust",
    "Force along the hoop: pull drawn outside, push inside",
    "The shape beside the hoop is as wide as the force along it. Ties are numbered T1 and so on, with their force.",
    stage,
    [markup, ...bars.map((bar) => barLine(bar, stage)), apart([...labels, ...ties], stageWidth)],
  );
}

const forceWords = (force: number, system: System): string =>
  force === 0
    ? "slack"
    : `${show(Math.abs(force), "force", system)} ${force > 0 ? "pull" : "push"}`;

/** Words beyond the tip of a value, on the side on which it is drawn. */
function tipLabel(
  { stations }: Stage,
  tips: readonly Spot[],
  place: number,
  side: number,
  words: string,
): Wanted {
  const tip = tips[place] as Spot;
  const out = stations[place]?.out ?? { x: 0, y: 0 };
  const spot = { x: tip.x + 7 * side * out.x, y: tip.y + 11 * side * out.y + 4 };
  return { spot, words, side: side * out.x };
}
