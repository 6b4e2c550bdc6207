import {
  asce716,
  asce722,
  type CaseTable,
  caseStride,
  type Enclosure,
  enclosureOf,
  type LeastLoad,
  leastLoads,
  mapSpeed,
  pressureFactors,
  roofSetsOf,
  shellOf,
  singleCheckCases,
  wallNames,
  windSurfaces,
} from "@hoopstay/load";
import { type ActionTable, type BaseLine, baseLines, type Holding } from "@hoopstay/stability";
import type { IndependentInput } from "./independent-case.ts";

/** Our own loads on a house of the independent calculation. */
export interface ComputedHouse {
  readonly q: number;
  readonly perSpeedSquared: number;
  readonly enclosure: Enclosure;
  readonly table: CaseTable;
  readonly least: readonly LeastLoad[];
}

export function computeHouse(input: IndependentInput): ComputedHouse {
  const shell = shellOf({
    shape: input.shape,
    span: input.span,
    rise: input.rise,
    length: input.length,
    springing: input.zs,
    hoopDiameter: input.tube,
    hoopCount: Math.round(input.length / input.spacing) + 1,
  });
  const side = shell.L * (input.zs + shell.arc.length / 4);
  const gross = {
    left: side,
    right: side,
    front: shell.endArea,
    back: shell.endArea,
    roof: (shell.L * shell.arc.length) / 2,
  };
  const openings = { ...input.aperture };
  for (const wall of wallNames) if (input.missing.includes(wall)) openings[wall] = gross[wall];
  const enclosure = enclosureOf(openings, gross);
  const { perSpeedSquared } = pressureFactors(
    {
      edition: input.edition === "7-16" ? asce716 : asce722,
      exposure: input.exposure,
      ...(input.elevation === null ? {} : { elevation: input.elevation }),
      ...(input.hill ? { hill: hillOf(input.hill) } : {}),
    },
    shell.h,
  );
  const body = { shell, obstacles: [], frame: { dragArea: 0, x: 0, y: 0, z: 0 } };
  const covering = enclosure.kind === "open" ? "open" : "covered";
  const ends = { front: !input.missing.includes("front"), back: !input.missing.includes("back") };
  const surfaces = windSurfaces(body, covering, ends, roofSetsOf(body, covering));
  return {
    q: perSpeedSquared * mapSpeed(input.speed, input.basis) ** 2,
    perSpeedSquared,
    enclosure,
    table: singleCheckCases(surfaces, enclosure.insideCoefficients),
    least: leastLoads(shell, covering, []),
  };
}

const hillOf = ({
  shape,
  height,
  half_length,
  distance,
}: NonNullable<IndependentInput["hill"]>) => ({
  shape,
  height,
  halfLength: half_length,
  ...(distance === null ? {} : { distance }),
});

/** Six components of each load case at a pressure. */
export const rowsOf = ({ count, components }: ActionTable, q: number): number[][] =>
  Array.from({ length: count }, (_, row) =>
    [...components.slice(row * caseStride, row * caseStride + 6)].map((one) => one * q),
  );

/** Least loads as a table of actions, N, to be checked at unit pressure. */
export function leastTable(least: readonly LeastLoad[]): ActionTable {
  const rows = least.map(({ axis, sense, force, height }) => {
    const push = sense * force;
    return axis === "across"
      ? [push, 0, 0, 0, height * push, 0, push]
      : [0, push, 0, -height * push, 0, 0, 0];
  });
  return { count: rows.length, components: Float64Array.from(rows.flat()) };
}

/** What holds the house: both weights, with its anchors or bare, and its base lines. */
export function holdingsOf(
  input: IndependentInput,
  anchored: boolean,
): { holdings: Holding[]; lines: BaseLine[] } {
  const bearing = {
    halfSpan: input.span / 2,
    front: input.rail_ends.front,
    back: -input.rail_ends.back,
    railWidth: input.rail_width,
    allowable: input.q_allow,
  };
  const anchors = (anchored ? input.anchors : []).map(({ x, y, T, u }) => ({
    x,
    y,
    pull: T,
    toward: u,
  }));
  const holdings = input.weights.map((weight) => ({
    weight,
    anchors,
    slope: input.slope,
    friction: input.mu,
  }));
  return { holdings, lines: baseLines(bearing, input.weights[0].W, anchors.length > 0) };
}
