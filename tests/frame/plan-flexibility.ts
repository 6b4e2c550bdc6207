import type { Base, RailInPlan, RailSide } from "@hoopstay/frame";
import { solveDense } from "./plan-dense-solve.ts";

/** What the force method finds for one load. */
export interface ByFlexibility {
  /** Of each hoop u, theta left, u, theta right; then what the rails do to it in the same order. */
  readonly feet: readonly number[];
  readonly forces: readonly number[];
  readonly axial: readonly number[];
  readonly anchors: readonly number[];
  readonly evenHold: readonly number[];
  readonly momentAt: (side: RailSide, y: number) => number;
  readonly torqueBehind: (side: RailSide, y: number) => number;
}

/** A joint of something with a rail: its place, and the number of the first of its forces. */
interface Foot {
  readonly side: RailSide;
  readonly y: number;
}

/**
 * The base by the force method, dense, as a second opinion: each rail is a beam on two imagined
 * supports at its ends and a shaft clamped at its front end, given whole by influence coefficients;
 * what hoops, cross members and anchors do to it are the unknowns, with the movements of the
 * imagined supports, whose forces must vanish. An even hold comes as two unknown line loads.
 */
export function byFlexibility(base: Base, fixedEnd: readonly number[]): ByFlexibility {
  const { length, span, hoops, crossMembers, sideHold } = base;
  const anchors = sideHold === "evenly" ? [] : sideHold;
  const ties = [
    ...hoops.map(({ y, stiffness }, i) => ({
      y,
      stiffness,
      clamped: fixedEnd.slice(4 * i, 4 * i + 4),
    })),
    ...crossMembers.map(({ y, axial, bending }) => {
      const [a, k] = [axial / span, bending / span];
      const stiffness = [a, 0, -a, 0, 0, 4 * k, 0, 2 * k, -a, 0, a, 0, 0, 2 * k, 0, 4 * k];
      return { y, stiffness, clamped: [0, 0, 0, 0] };
    }),
  ];
  // Unknowns: four forces on the rails from each tie, one of each anchor, then of each rail two ways
  // at its ends and a turn of its front end, then the line loads.
  const firstAnchor = 4 * ties.length;
  const firstMove = firstAnchor + anchors.length;
  const firstLine = firstMove + 6;
  const count = firstLine + (sideHold === "evenly" ? 2 : 0);
  const feet: Foot[] = ties.flatMap(({ y }) => [
    { side: "left", y } as const,
    { side: "left", y } as const,
    { side: "right", y } as const,
    { side: "right", y } as const,
  ]);
  const isTurn = (i: number): boolean => i < firstAnchor && i % 2 === 1;
  const all: Foot[] = [...feet, ...anchors.map(({ rail, y }) => ({ side: rail, y }))];
  const railOf = (side: RailSide): RailInPlan => base[side];
  const move = (side: RailSide): number => firstMove + (side === "left" ? 0 : 3);

  /** Way or turn at a foot as a row over the unknowns. */
  const movement = (i: number): number[] => {
    const { side, y } = all[i] as Foot;
    const row = new Array<number>(count).fill(0);
    const { bending, twist } = railOf(side);
    all.forEach((other, j) => {
      if (other.side !== side || isTurn(i) !== isTurn(j)) return;
      row[j] = isTurn(i) ? Math.min(y, other.y) / twist : simpleBeam(length, y, other.y) / bending;
    });
    if (isTurn(i)) {
      row[move(side) + 2] = 1;
      return row;
    }
    row[move(side)] = 1 - y / length;
    row[move(side) + 1] = y / length;
    if (sideHold === "evenly") {
      row[firstLine] = lineWay(length, y, () => 1) / bending;
      row[firstLine + 1] = lineWay(length, y, (z) => z - length / 2) / bending;
    }
    return row;
  };
  const movements = all.map((_, i) => movement(i));
  const rows: number[][] = [];
  const given: number[] = [];
  // What a tie does to a rail is the opposite of its stiffness by its movements and of its clamps.
  ties.forEach(({ stiffness, clamped }, tie) => {
    for (let i = 0; i < 4; i += 1) {
      const row = new Array<number>(count).fill(0);
      for (let j = 0; j < 4; j += 1) {
        const k = stiffness[4 * i + j] as number;
        movements[4 * tie + j]?.forEach((value, at) => {
          row[at] = (row[at] as number) + k * value;
        });
      }
      row[4 * tie + i] = (row[4 * tie + i] as number) + 1;
      rows.push(row);
      given.push(-(clamped[i] as number));
    }
  });
  anchors.forEach(({ stiffness }, i) => {
    const row = (movements[firstAnchor + i] as number[]).map((value) => stiffness * value);
    row[firstAnchor + i] = (row[firstAnchor + i] as number) + 1;
    rows.push(row);
    given.push(0);
  });
  // The imagined supports carry nothing: forces, their turning and torques vanish on each rail.
  for (const side of ["left", "right"] as const) {
    const onRail = all.map((foot, j) => ({ ...foot, j })).filter((foot) => foot.side === side);
    const [force, turning, torque] = [0, 1, 2].map(() => new Array<number>(count).fill(0));
    for (const { y, j } of onRail) {
      if (isTurn(j)) (torque as number[])[j] = 1;
      else {
        (force as number[])[j] = 1;
        (turning as number[])[j] = y - length / 2;
      }
    }
    if (sideHold === "evenly") {
      (force as number[])[firstLine] = length;
      (turning as number[])[firstLine + 1] = length ** 3 / 12;
    }
    rows.push(force as number[], turning as number[], torque as number[]);
    given.push(0, 0, 0);
  }
  // Ways are measured from the line between the mid-points of the rails' ends.
  for (const end of sideHold === "evenly" ? [0, 1] : []) {
    const row = new Array<number>(count).fill(0);
    row[move("left") + end] = 1;
    row[move("right") + end] = 1;
    rows.push(row);
    given.push(0);
  }
  const found = solveDense(rows, given);
  const ways = movements.map((row) =>
    row.reduce((sum, value, j) => sum + value * (found[j] as number), 0),
  );
  const line = found.slice(firstLine);
  const [middle = 0, rise = 0] = line;
  return {
    feet: ways.slice(0, 4 * hoops.length),
    forces: found.slice(0, 4 * hoops.length).map((force) => -force),
    axial: crossMembers.map((_, i) => -(found[4 * (hoops.length + i) + 2] as number)),
    anchors: found.slice(firstAnchor, firstMove),
    evenHold: [middle, rise],
    momentAt: (side, y) =>
      all.reduce(
        (sum, foot, j) =>
          foot.side === side && !isTurn(j)
            ? sum + (found[j] as number) * Math.max(0, y - foot.y)
            : sum,
        (middle * y * y) / 2 + rise * (y ** 3 / 6 - (length * y * y) / 4),
      ),
    torqueBehind: (side, y) =>
      all.reduce(
        (sum, foot, j) =>
          foot.side === side && isTurn(j) && foot.y <= y + 1e-9 ? sum - (found[j] as number) : sum,
        0,
      ),
  };
}

/** E I times the way at y of a simple beam under a unit force at z. */
function simpleBeam(length: number, y: number, z: number): number {
  const [near, far] = y <= z ? [y, length - z] : [length - y, z];
  return (near * far * (length ** 2 - near ** 2 - far ** 2)) / (6 * length);
}

/** E I times the way at y of a simple beam under a line load: the unit load, integrated by Gauss. */
function lineWay(length: number, y: number, load: (z: number) => number): number {
  const spots = [
    [0.339981043584856, 0.652145154862546],
    [0.861136311594053, 0.347854845137454],
  ].flatMap(([place = 0, weight = 0]) => [
    [-place, weight],
    [place, weight],
  ]);
  const within = (from: number, to: number): number =>
    spots.reduce((sum, [place = 0, weight = 0]) => {
      const z = (from + to) / 2 + (place * (to - from)) / 2;
      return sum + ((weight * (to - from)) / 2) * load(z) * simpleBeam(length, y, z);
    }, 0);
  return within(0, y) + within(y, length);
}
