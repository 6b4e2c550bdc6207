import type { EvidenceRow } from "@hoopstay/core";
import {
  extremeAt,
  fixedFeet,
  type HoopFrame,
  hoopExtremes,
  hoopForcesAt,
  hoopShapeAt,
  pinnedFeet,
  pointOnLine,
  responsesOnFeet,
  superpose,
} from "@hoopstay/frame";
import type { NumberSet } from "../row.ts";
import { frameOf, type HoopCase, type ReferenceLoad } from "./hoop-case.ts";
import { staticsRow } from "./statics-row.ts";

const file = {
  file: "hoop_cases.json",
  place: "hoops by the force method on the exact curve, by other code",
};

/** What is compared of every load, with the part that may be off and why. */
const quantities = {
  resultant: ["resultant of the load", 1e-8, "ten digits of the pieces' angles"],
  reactions: ["reactions at the feet", 1e-7, "the file holds to 2.2e-7 against a second method"],
  tie: ["force in the tie", 1e-7, "as the reactions"],
  moments: ["greatest and least moment", 1e-8, "ten digits printed"],
  axial: ["greatest and least axial force", 1e-8, "ten digits printed"],
  shear: ["greatest shear", 1e-8, "ten digits printed"],
  places: ["moment where it is greatest and least", 1e-5, "places to 1e-5 m, at kinks"],
  stations: ["N, V and M at stations", 1e-8, "ten digits printed"],
  crown: ["movement of the crown", 1e-6, "of the greatest movement"],
  farthest: ["greatest movement", 1e-4, "a parabola through straight elements, six digits"],
  there: ["movement where it is greatest", 1e-5, "six digits printed"],
} as const satisfies Record<string, readonly [string, number, string]>;

type Quantity = keyof typeof quantities;

/** The rows of a case: each quantity over all its loads. */
export function hoopRows(one: HoopCase): EvidenceRow[] {
  const { frame, factors } = frameOf(one);
  const rows = responsesOnFeet(frame, one.base === "pin" ? pinnedFeet : fixedFeet);
  const compared = one.loads.map((load) => {
    const response = new Float64Array(frame.size);
    superpose(rows, frame.size, factors.get(load) as number[], response);
    return comparedUnder(load, one, frame, response);
  });
  const inputs = `${one.description}; loads ${one.loads.map(({ name }) => name).join(", ")}`;
  const row = (quantity: string, sets: readonly NumberSet[], allowed: number, why: string) =>
    staticsRow(file, { case: one.id, inputs, quantity, sets, allowed, why });
  const length = { ours: [frame.hoop.line.length], theirs: [one.developed_length] };
  return [
    row("developed length", [length], 1e-9, "ten digits printed"),
    ...(Object.keys(quantities) as Quantity[]).flatMap((quantity) => {
      const sets = compared.flatMap((load) => load[quantity] ?? []);
      return sets.length === 0
        ? []
        : [row(quantities[quantity][0], sets, quantities[quantity][1], quantities[quantity][2])];
    }),
  ];
}

function comparedUnder(
  { results, load_resultant: resultant }: ReferenceLoad,
  one: HoopCase,
  frame: HoopFrame,
  response: Float64Array,
): Partial<Record<Quantity, NumberSet>> {
  const at = (i: number): number => response[i] as number;
  const { line } = frame.hoop;
  const left = pointOnLine(line, 0);
  const [x, z] = [at(12), at(13)];
  const reactions = [...results.R_left, ...results.R_right];
  // Loads of 1 N/m and 1 N: nothing is compared on less than their greatest reaction.
  const force = Math.max(...reactions.map(Math.abs));
  if ((results.tie_force === null) !== (one.tie === null)) throw new Error(`${one.id}: tie`);
  const found = new Float64Array(12);
  hoopExtremes(frame, response, found);
  const most = (which: keyof typeof extremeAt): number => found[extremeAt[which]] as number;
  const moments = [most("momentMost"), most("momentLeast")];
  return {
    resultant: {
      ours: [x, z, at(14) - left.x * z + left.z * x],
      theirs: [resultant.Fx, resultant.Fy, resultant.M_about_left_base],
    },
    reactions: { ours: Array.from(response.slice(0, 6)), theirs: reactions },
    ...(results.tie_force === null
      ? {}
      : { tie: { ours: [at(frame.barAt(0))], theirs: [results.tie_force], least: force } }),
    moments: {
      ours: [...moments, Math.max(...moments.map(Math.abs))],
      theirs: [results.M_max.M, results.M_min.M, results.M_absmax],
    },
    axial: {
      ours: [most("axialMost"), most("axialLeast")],
      theirs: [results.N_max, results.N_min],
    },
    shear: {
      ours: [Math.max(most("shearMost"), -most("shearLeast"))],
      theirs: [results.V_absmax],
    },
    places: momentsInPlace(results, frame, response, force),
    stations: atStations(results, one, frame, response, force),
    ...movements(results, frame, response),
  };
}

/** The moment on the nearer side of a kink, where the file says that it is greatest and least. */
function momentsInPlace(
  { M_max, M_min, M_absmax }: ReferenceLoad["results"],
  frame: HoopFrame,
  response: Float64Array,
  force: number,
): NumberSet {
  const theirs = [M_max, M_min];
  const ours = theirs.map(({ M, s }) => {
    const place = Math.min(s, frame.hoop.line.length);
    const sides = (["left", "right"] as const).map(
      (side) => hoopForcesAt(frame, response, place, side).M,
    );
    return sides.reduce((near, moment) =>
      Math.abs(moment - M) < Math.abs(near - M) ? moment : near,
    );
  });
  return { ours, theirs: theirs.map(({ M }) => M), scale: 1e-3 * M_absmax + force };
}

function atStations(
  { stations_s_N_V_M: stations }: ReferenceLoad["results"],
  one: HoopCase,
  frame: HoopFrame,
  response: Float64Array,
  force: number,
): NumberSet {
  const radius = Math.max(...one.pieces.map((piece) => (piece.kind === "arc" ? piece.R : 0)));
  const { length } = frame.hoop.line;
  const ours = stations.flatMap(([s]) => {
    const onBreak = frame.breaks.find((place) => Math.abs(place - s) < 2e-9 * length);
    const { N, V, M } = hoopForcesAt(frame, response, onBreak ?? s, "left");
    return [N, V, M / radius];
  });
  return { ours, theirs: stations.flatMap(([, N, V, M]) => [N, V, M / radius]), least: force };
}

function movements(
  { crown_disp, disp_max }: ReferenceLoad["results"],
  frame: HoopFrame,
  response: Float64Array,
): Partial<Record<Quantity, NumberSet>> {
  const { length } = frame.hoop.line;
  const movedAt = (s: number): number => {
    const { x, z } = hoopShapeAt(frame, response, s);
    return Math.hypot(x, z);
  };
  const crown = hoopShapeAt(frame, response, length / 2);
  const farthest = Math.max(...Array.from({ length: 401 }, (_, i) => movedAt((i * length) / 400)));
  return {
    crown: { ours: [crown.x, crown.z], theirs: crown_disp, least: farthest },
    farthest: { ours: [farthest], theirs: [disp_max.d] },
    there: { ours: [movedAt(disp_max.s)], theirs: [disp_max.d] },
  };
}
