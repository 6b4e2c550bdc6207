import { type LinkNotChecked, measured } from "@hoopstay/core";
import { effectiveArea, flatArea, wallComponent } from "@hoopstay/load";
import { wallCases } from "../along/wall-cases.ts";
import type { ChainContext } from "../context.ts";
import { designWind } from "../demand.ts";
import { coefficientOf, componentGroups, harder, netComponent } from "./component-groups.ts";
import { liftedFilms } from "./film-tension.ts";

type End = "front" | "back";

/** Greatest net coefficient of a component of the end walls, either way. */
function mostOf(
  { evaluation }: ChainContext,
  ends: readonly End[],
  corner: boolean,
  area: number,
): number {
  const groups = componentGroups(evaluation, (set) => ends.some((end) => set.ends[end]));
  return groups.reduce((most, group) => {
    const outside = wallComponent(group.table, corner, area);
    const one = (way: "inward" | "outward") => netComponent(group, outside, way, "end wall");
    return Math.max(most, Math.abs(coefficientOf(harder(one("inward"), one("outward")))));
  }, 0);
}

/** What of the end walls is not checked, each with what it would have to carry at the design wind. */
export function unknownWall(context: ChainContext, ends: readonly End[]): LinkNotChecked[] {
  const { evaluation } = context;
  const { house } = evaluation;
  const q = designWind(context);
  const made: LinkNotChecked[] = [];
  const add = (words: string, why: string, demand: LinkNotChecked["demand"]): void => {
    made.push({ link: "end-wall", words, why, demand });
  };
  const onWall = wallCases(context).reduce(
    (most, { push }) => Math.max(most, ...ends.map((end) => Math.abs(push[end]))),
    0,
  );
  const bare = ends.filter((end) => !house.links.studs[end]);
  if (bare.length > 0) {
    const keys = bare.map((end) => `end_walls.${end}.studs`).join(", ");
    const why = `not entered (${keys}); the wind on a whole wall, main frame`;
    add(`studs or frame of the end walls (${bare.join(", ")})`, why, measured(q * onWall, "force"));
  }
  const half = measured((q * onWall) / 2, "force");
  add(
    "an end wall made fast to its hoop",
    "not entered; half of the wind on the wall, along the hoop",
    half,
  );
  add(
    "an end wall made fast at the ground",
    "not entered; the other half goes to whatever its foot stands on",
    half,
  );
  const cladding = q * mostOf(context, ends, true, flatArea);
  add(
    "cladding of the end walls and its fastening",
    "no strength is entered; pressure or suction near a corner, on 10 ft2 or less",
    measured(cladding, "pressure"),
  );
  const doors = ends.flatMap((end) => house.links.doors[end]);
  if (doors.length > 0) {
    const onDoors = doors.map(({ width, height }) => {
      const [span, across] = [Math.max(width, height), Math.min(width, height)];
      return (
        q * width * height * mostOf(context, ends, false, effectiveArea.evaluate(span, across))
      );
    });
    add(
      "doors: leaf, hinges and latch",
      "not entered; the wind on the greatest door when it is shut",
      measured(Math.max(...onDoors), "force"),
    );
  }
  const lifts = liftedFilms(context).map((film) => Math.abs(coefficientOf(film)));
  if (lifts.length > 0) {
    add(
      "the film's end edge on the end hoop",
      "how it is held there is not entered; half a bay of lifted film, per length of hoop",
      measured((q * Math.max(...lifts) * house.spacing) / 2, "force-per-length"),
    );
  }
  return made;
}
