import type { Complaint } from "@hoopstay/core";
import { type EndsPresent, type EnvelopeAreas, type Shell, shellOf } from "@hoopstay/load";
import type { House, Openings } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { nearest } from "../read/nearest.ts";

/** A state the owner can leave the house in: its openings, m2, and the end walls that are there. */
export interface HouseState {
  readonly id: string;
  readonly words: string;
  readonly filmOn: boolean;
  readonly openings: Openings;
  readonly ends: EndsPresent;
}

/** Gross areas of the envelope for the opening tests only, m2. */
export function grossAreas(shell: Shell): EnvelopeAreas {
  const side = shell.L * (shell.springing + shell.arc.length / 4);
  const roof = (shell.L * shell.arc.length) / 2;
  return { left: side, right: side, front: shell.endArea, back: shell.endArea, roof };
}

type OpenPart = "front doors" | "back doors" | "left side" | "right side" | "vents";

interface Arrangement {
  readonly id: string;
  readonly words: string;
  readonly open: readonly OpenPart[];
  readonly missing?: readonly ("front" | "back")[];
  readonly filmOff?: true;
}

/** Every arrangement of doors, sides, vents, end walls and film the owner can leave behind. */
function arrangements(house: House): Arrangement[] {
  const has = (kind: string, wall?: string): boolean =>
    house.openings.some(
      (opening) => opening.kind === kind && !opening.always && (!wall || opening.wall === wall),
    );
  const doors: OpenPart[] = [];
  if (has("door", "front")) doors.push("front doors");
  if (has("door", "back")) doors.push("back doors");
  const sides: OpenPart[] = [];
  if (has("roll-up", "left")) sides.push("left side");
  if (has("roll-up", "right")) sides.push("right side");
  const vents: OpenPart[] = has("vent") ? ["vents"] : [];
  const list: Arrangement[] = [{ id: "shut", words: "all shut", open: [] }];
  if (doors.includes("front doors")) {
    list.push({ id: "front-open", words: "front door open", open: ["front doors"] });
  }
  if (doors.includes("back doors")) {
    list.push({ id: "back-open", words: "back door open", open: ["back doors"] });
  }
  if (doors.length === 2) list.push({ id: "both-open", words: "both end doors open", open: doors });
  if (sides.includes("left side")) {
    list.push({ id: "left-up", words: "left side up", open: ["left side"] });
  }
  if (sides.includes("right side")) {
    list.push({ id: "right-up", words: "right side up", open: ["right side"] });
  }
  if (sides.length === 2) list.push({ id: "sides-up", words: "both sides up", open: sides });
  if (vents.length > 0) list.push({ id: "vents-open", words: "vents open", open: vents });
  const all = [...doors, ...sides, ...vents];
  if (all.length > 1 && doors.length + sides.length > 1) {
    list.push({ id: "all-open", words: "everything open", open: all });
  }
  for (const end of house.removableEnds) {
    list.push({ id: `${end}-missing`, words: `${end} end wall missing`, open: [], missing: [end] });
  }
  if (house.removableEnds.length === 2) {
    const missing = house.removableEnds;
    list.push({ id: "ends-missing", words: "both end walls missing", open: [], missing });
    if (sides.length === 2) {
      const words = "both end walls missing, sides up";
      list.push({ id: "ends-missing-sides-up", words, open: sides, missing });
    }
  }
  if (house.filmRemovable) {
    list.push({ id: "film-off", words: "film off, end walls standing", open: [], filmOff: true });
  }
  return list;
}

const partOf = {
  front: "front doors",
  back: "back doors",
  left: "left side",
  right: "right side",
} as const;

function openingsOf(house: House, shell: Shell, arrangement: Arrangement): Openings {
  const gross = grossAreas(shell);
  const { sides, ends } = house.gapWidth;
  const areas = {
    left: shell.L * sides,
    right: shell.L * sides,
    front: shell.b * ends,
    back: shell.b * ends,
    roof: 0,
  };
  for (const { kind, wall, area, always } of house.openings) {
    const part: OpenPart = kind === "vent" || wall === "roof" ? "vents" : partOf[wall];
    if (always || arrangement.open.includes(part)) areas[wall] += area;
  }
  for (const end of arrangement.missing ?? []) areas[end] = gross[end];
  return areas;
}

/** All states of a house that are checked: those it can be left in, and those its file describes. */
export function statesOf(house: House, shell: Shell): HouseState[] {
  const gross = grossAreas(shell);
  const given = house.givenStates.map(({ id, words, openings, missing }): HouseState => {
    const ends = { front: !missing.includes("front"), back: !missing.includes("back") };
    const areas = { ...openings };
    for (const end of missing) areas[end] = gross[end];
    return { id, words, filmOn: true, openings: areas, ends };
  });
  if (house.onlyGivenStates) return given;
  const built = arrangements(house).map((arrangement): HouseState => {
    const missing = arrangement.missing ?? [];
    return {
      id: arrangement.id,
      words: arrangement.words,
      filmOn: arrangement.filmOff !== true,
      openings: openingsOf(house, shell, arrangement),
      ends: { front: !missing.includes("front"), back: !missing.includes("back") },
    };
  });
  return [...built, ...given];
}

/** The complaint about a site file whose `now` names no state of this house. */
export function nowComplaint(house: House, { now }: Site): Complaint | null {
  const ids = statesOf(house, shellOf(house.lines)).map(({ id }) => id);
  if (ids.includes(now) || (house.onlyGivenStates && now === "shut")) return null;
  const near = nearest(now, ids);
  return {
    code: "wrong-kind",
    given: now,
    expected: `a state of this house: ${ids.join(", ")}`,
    mend: near ? `Did you mean "${near}"?` : "Take one of the states listed.",
  };
}
