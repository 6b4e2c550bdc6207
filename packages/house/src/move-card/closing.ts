import type { House } from "../model/house-model.ts";

interface PartToClose {
  readonly name: string;
  readonly how: string;
}

const walls = ["front", "back", "left", "right"] as const;

/** Everything of a house that opens and can be shut again, in the order of a walk around it. */
export function partsToClose({ openings }: House): PartToClose[] {
  const closable = openings.filter(({ always }) => !always);
  const parts: PartToClose[] = [];
  for (const wall of walls) {
    if (closable.some((one) => one.kind === "door" && one.wall === wall)) {
      parts.push({ name: `${wall} door`, how: "shut and latched" });
    }
    if (closable.some((one) => one.kind === "roll-up" && one.wall === wall)) {
      parts.push({ name: `${wall} side`, how: "rolled down and fastened" });
    }
  }
  if (closable.some(({ kind }) => kind === "vent")) parts.push({ name: "vents", how: "shut" });
  return parts;
}

/** What to close before the house is left, end walls that come off included. */
export function closingList(house: House): string[] {
  const parts = partsToClose(house);
  const ends = house.removableEnds.map((end) => ({
    name: `${end} end wall`,
    how: "in place and fastened",
  }));
  return [...ends, ...parts].map(({ name, how }) => `${name}: ${how}`);
}
