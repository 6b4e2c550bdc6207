import type { LoadSet } from "../../review/evaluate.ts";
import type { ChainContext } from "../context.ts";
import { grouped } from "../grouped.ts";
import { type FootForces, type FootReading, type FootSide, footSides } from "./foot-forces.ts";
import type { HoopAnswer } from "./hoop-answers.ts";

/** A hoop under a case in some load sets, with what pushes it along the house, if anything does. */
export interface LoadedHoop {
  readonly answer: HoopAnswer;
  readonly sets: ReadonlyMap<LoadSet, number>;
  readonly demand: {
    readonly shear: number;
    readonly tipping: number;
    readonly torque: number;
    readonly atBolts: number;
  } | null;
}

/** One foot of a hoop, and the load sets in which no other foot is asked at least as much. */
export interface GoverningFoot<Loaded extends LoadedHoop> {
  readonly pushed: Loaded;
  readonly side: FootSide;
  readonly sets: ReadonlyMap<LoadSet, number>;
}

/** What a foot feels of weight and wind, with signs, and of the push along the house, without. */
interface Feels<Loaded extends LoadedHoop> {
  readonly pushed: Loaded;
  readonly side: FootSide;
  /** Uplift, thrust, couple in a wind without weight, and in the lightest wind that counts. */
  readonly strong: readonly number[];
  readonly light: readonly number[];
  readonly along: readonly number[];
}

/** Part of the design pressure from which winds are compared. */
const lightest = 0.1;
/** Least wind factor and greatest weight factor beside it. */
const [windFactor, deadFactor] = [0.6, 1];
const slack = 1 + 1e-9;

/**
 * Of all feet those that can govern a part which no force relieves: a foot is left out of a load set
 * where another one, alike in all else, is asked at least as much by every force in every wind from
 * a tenth of the design pressure up. Ties may fail, so that hoops with them outdo no other.
 *
 * @param alike the same for feet that may be compared
 */
export function governingFeet<Loaded extends LoadedHoop>(
  context: ChainContext,
  pushed: readonly Loaded[],
  reading: FootReading,
  alike: (answer: HoopAnswer, side: FootSide) => string,
): GoverningFoot<Loaded>[] {
  const { evaluation, dead } = context;
  const weight = (deadFactor * dead.high) / (windFactor * lightest * evaluation.pressure);
  const feet = pushed.flatMap((one) => {
    const [left, right] = footSides.map((side) => feelsOf(one, side, reading, weight));
    if (!left || !right) return [];
    const apart = alike(one.answer, "left") !== alike(one.answer, "right");
    if (!apart && outdoes(left, right)) return [left];
    return !apart && outdoes(right, left) ? [right] : [left, right];
  });
  const perSet = feet.flatMap((feels) =>
    [...feels.pushed.sets].map(([set, index]) => ({ feels, set, index })),
  );
  const kept = new Map<Feels<Loaded>, Map<LoadSet, number>>();
  for (const inSet of grouped(perSet, ({ set }) => set).values()) {
    const compared = grouped(inSet, ({ feels }) => alike(feels.pushed.answer, feels.side));
    for (const group of compared.values()) {
      const standing = new Set(notOutdone(group.map(({ feels }) => feels)));
      for (const { feels, set, index } of group) {
        if (!standing.has(feels)) continue;
        const sets = kept.get(feels) ?? new Map<LoadSet, number>();
        kept.set(feels, sets.set(set, index));
      }
    }
  }
  return [...kept].map(([{ pushed: own, side }, sets]) => ({ pushed: own, side, sets }));
}

function notOutdone<Loaded extends LoadedHoop>(feet: readonly Feels<Loaded>[]): Feels<Loaded>[] {
  const isTied = ({ pushed }: Feels<Loaded>): boolean => pushed.answer.run.tied;
  const untied = feet.filter((one) => !isTied(one)).toSorted((a, b) => sizeOf(b) - sizeOf(a));
  let front: Feels<Loaded>[] = [];
  for (const feels of untied) {
    if (front.some((other) => outdoes(other, feels))) continue;
    front = [...front.filter((other) => !outdoes(feels, other)), feels];
  }
  const tied = feet.filter((one) => isTied(one) && !front.some((other) => outdoes(other, one)));
  return [...front, ...tied];
}

const sizeOf = ({ strong }: Pick<Feels<LoadedHoop>, "strong">): number =>
  strong.reduce((sum, force) => sum + Math.abs(force), 0);

function feelsOf<Loaded extends LoadedHoop>(
  pushed: Loaded,
  side: FootSide,
  { at }: FootReading,
  weight: number,
): Feels<Loaded> {
  const none = (): FootForces => ({ uplift: 0, thrust: 0, couple: 0 });
  const { answer, demand } = pushed;
  const still = at(answer, side, 1, 0, none());
  const blown = at(answer, side, 0, 1, none());
  const both = at(answer, side, 1, 1, none());
  // Thrust and couple are read without sign: where weight and wind oppose, so do they here.
  const signed = (name: "thrust" | "couple"): number =>
    both[name] < Math.max(still[name], blown[name]) - 1e-12 ? -still[name] : still[name];
  const strong = [blown.uplift, blown.thrust, blown.couple];
  const byWeight = [still.uplift, signed("thrust"), signed("couple")];
  return {
    pushed,
    side,
    strong,
    light: strong.map((value, force) => value + weight * (byWeight[force] as number)),
    along: demand ? [demand.shear, demand.tipping, demand.torque, demand.atBolts] : [],
  };
}

/** Whether a foot is asked at least as much as another by every force; ties are not looked at. */
function outdoes(one: Feels<LoadedHoop>, other: Feels<LoadedHoop>): boolean {
  for (let force = 0; force < one.along.length; force += 1) {
    if ((other.along[force] as number) > slack * (one.along[force] as number)) return false;
  }
  for (let force = 0; force < one.strong.length; force += 1) {
    const a = one.strong[force] as number;
    const b = one.light[force] as number;
    const c = other.strong[force] as number;
    const d = other.light[force] as number;
    if (force === 0 && (a * c < 0 || b * d < 0)) return false;
    if (!isFarther(a, b, c, d)) return false;
  }
  return true;
}

/** Whether of two straight lines, a to b and c to d, the first is nowhere nearer to nought. */
function isFarther(a: number, b: number, c: number, d: number): boolean {
  const size = (slack - 1) * (Math.abs(a) + Math.abs(b) + Math.abs(c) + Math.abs(d));
  for (let sign = -1; sign <= 1; sign += 2) {
    if (sign * a + size >= Math.abs(c) && sign * b + size >= Math.abs(d)) return true;
    if (Math.abs(a - sign * c) <= size && Math.abs(b - sign * d) <= size) return true;
  }
  return false;
}
