import { type EvidenceRow, power } from "@hoopstay/core";
import { type RailSupport, railAt, tributaryLengths } from "@hoopstay/frame";
import type { NumberSet } from "../row.ts";
import { heldRail } from "./held-rail.ts";
import { staticsRow } from "./statics-row.ts";

/** A case of `boef_cases.json`: a beam on an elastic bed under one load. */
export interface BedCase {
  readonly case: string;
  readonly k: number;
  readonly EI: number;
  readonly L?: number;
  readonly P?: number;
  readonly beta?: number;
  readonly y_centre?: number;
  readonly M_centre?: number;
  readonly y_end?: number;
  readonly y0?: number;
  readonly M0?: number;
  readonly M_min?: number;
  readonly x_Mmin?: number;
}

const file = {
  file: "boef_cases.json",
  place: "beams on an elastic bed, Hetenyi's closed forms, by other code",
};

const betaOf = ({ beta, k, EI }: BedCase): number => beta ?? power(k / (4 * EI), 0.25);

/** A rail on a two-way bed, as the closed forms have it: springs at equal stations, down load P. */
function onBed({ k, EI, P = 1000 }: BedCase, length: number, count: number, at: number) {
  const stations = Array.from({ length: count + 1 }, (_, i) => (i * length) / count);
  const springs = tributaryLengths(length, stations).map(
    (part, i): RailSupport => ({ kind: "two-way", x: stations[i] as number, stiffness: k * part }),
  );
  const forces = [{ x: at, force: -P }];
  return heldRail({ length, stiffness: EI }, { forces }, springs);
}

/** What the file gives for a case, and what springs at `count` spaces give; y down positive. */
function compared(one: BedCase, count: number): { ours: number[]; theirs: number[] } {
  const length = one.L ?? 30 / betaOf(one);
  const atEnd = one.case.includes("end load") || one.case.includes("one end");
  const loaded = atEnd ? 0 : length / 2;
  const { bent, extremes } = onBed(one, length, count, loaded);
  const here = railAt(bent, loaded);
  const pairs: [number, number | undefined][] = [
    [-here.deflection, one.y_centre ?? one.y0 ?? (atEnd ? one.y_end : undefined)],
    [here.moment, one.M_centre ?? one.M0],
    [-railAt(bent, 0).deflection, atEnd ? undefined : one.y_end],
    [extremes.momentLeast.moment, one.M_min],
  ];
  const given = pairs.filter(([, value]) => value !== undefined);
  return {
    ours: given.map(([value]) => value),
    theirs: given.map(([, value]) => value as number),
  };
}

/**
 * The rows of a case. Springs at stations err with the square of their spacing: the error at 300
 * spaces is under 0.5 %, a quarter of that at 150, and two steps carried on to no spacing leave 0.05 %
 * (the greatest moment of an end load stands between stations). The free end of the longest rail
 * does not move (2e-8 m): its error counts against the load's place.
 */
export function bedRows(one: BedCase): EvidenceRow[] {
  const [coarse, fine] = [compared(one, 150), compared(one, 300)];
  const inputs = `k ${one.k} N/m2, EI ${one.EI} N m2, L ${one.L ?? "endless"} m`;
  const sizes = fine.theirs.map((value, i) =>
    Math.max(Math.abs(value), i < 2 ? 0 : 1e-3 * Math.abs(fine.theirs[0] ?? 0)),
  );
  const setsOf = (ours: readonly number[]): NumberSet[] =>
    fine.theirs.map((value, i) => ({
      ours: [ours[i] as number],
      theirs: [value],
      scale: sizes[i] as number,
    }));
  const carriedOn = fine.ours.map((value, i) => value + (value - (coarse.ours[i] as number)) / 3);
  const row = (quantity: string, sets: readonly NumberSet[], allowed: number, why: string) =>
    staticsRow(file, { case: one.case, inputs, quantity, sets, allowed, why });
  const { x_Mmin: place } = one;
  const what = "deflections and moments";
  return [
    row(`${what}, 300 springs`, setsOf(fine.ours), 5e-3, "springs for a bed"),
    row(`${what}, carried on to no spacing`, setsOf(carriedOn), 5e-4, "of two steps"),
    ...(place === undefined
      ? []
      : [
          row(
            "place of the greatest moment",
            [
              {
                ours: [onBed(one, 30 / betaOf(one), 3000, 0).extremes.momentLeast.x],
                theirs: [place],
              },
            ],
            1e-2,
            "stations",
          ),
        ]),
  ];
}
