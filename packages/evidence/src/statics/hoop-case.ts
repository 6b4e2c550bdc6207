import { type HoopBar, HoopFrame, type HoopLoad, type HoopPiece, hoopLine } from "@hoopstay/frame";

type Pair = readonly [number, number];
type Triple = readonly [number, number, number];

interface Extreme {
  readonly M: number;
  readonly s: number;
}

/** One load of a case: what acts, and what the file gives for it. */
export interface ReferenceLoad {
  readonly name: string;
  readonly inputs: {
    readonly zones?: readonly Triple[];
    readonly w?: number;
    /** Place, force in x, force in y, couple. */
    readonly points?: readonly (readonly [number, number, number, number])[];
  };
  readonly load_resultant: {
    readonly Fx: number;
    readonly Fy: number;
    readonly M_about_left_base: number;
  };
  readonly results: {
    readonly R_left: Triple;
    readonly R_right: Triple;
    readonly tie_force: number | null;
    readonly M_max: Extreme;
    readonly M_min: Extreme;
    readonly M_absmax: number;
    readonly N_max: number;
    readonly N_min: number;
    readonly V_absmax: number;
    readonly crown_disp: Pair;
    readonly disp_max: { readonly d: number; readonly s: number };
    /** Place, N, V, M. */
    readonly stations_s_N_V_M: readonly (readonly [number, number, number, number])[];
  };
}

/** A case of `hoop_cases.json`. */
export interface HoopCase {
  readonly id: string;
  readonly description: string;
  readonly base: "pin" | "fix";
  readonly developed_length: number;
  readonly pieces: readonly (
    | {
        readonly kind: "arc";
        readonly c: Pair;
        readonly R: number;
        readonly a0_deg: number;
        readonly a1_deg: number;
      }
    | { readonly kind: "line"; readonly a: Pair; readonly b: Pair }
  )[];
  readonly E: number;
  readonly A: number;
  readonly I: number;
  readonly tie: { readonly s1: number; readonly s2: number; readonly EA: number } | null;
  readonly crown_hinge: boolean;
  readonly loads: readonly ReferenceLoad[];
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

function pieceOf(piece: HoopCase["pieces"][number]): HoopPiece {
  if (piece.kind === "line") {
    const [a, b] = [piece.a, piece.b];
    return { kind: "straight", from: { x: a[0], z: a[1] }, to: { x: b[0], z: b[1] } };
  }
  const centre = { x: piece.c[0], z: piece.c[1] };
  const [fromAngle, toAngle] = [radians(piece.a0_deg), radians(piece.a1_deg)];
  return { kind: "arc", centre, radius: piece.R, fromAngle, toAngle };
}

/** A unit load for each number that the inputs of a load hold, and these numbers. */
function unitLoads({ zones = [], w, points = [] }: ReferenceLoad["inputs"], length: number) {
  const onLine = (s: number): number => Math.min(s, length);
  const normal = zones.map(([from, to]): HoopLoad => {
    return { kind: "normal", from: onLine(from), to: onLine(to) };
  });
  const weight: HoopLoad[] = w === undefined ? [] : [{ kind: "weight" }];
  const point = points.map(([s, x, z, couple]): HoopLoad => ({ kind: "point", s, x, z, couple }));
  return {
    loads: [...normal, ...weight, ...point],
    factors: [
      ...zones.map(([, , q]) => q),
      ...(w === undefined ? [] : [w]),
      ...points.map(() => 1),
    ],
  };
}

/** The frame of a case with the unit loads of all its loads, and each load's factors on them. */
export function frameOf(one: HoopCase): {
  frame: HoopFrame;
  factors: Map<ReferenceLoad, number[]>;
} {
  const line = hoopLine(one.pieces.map(pieceOf));
  const section = { A: one.A, I: one.I, E: one.E };
  const parts = one.loads.map(({ inputs }) => unitLoads(inputs, line.length));
  const all = parts.flatMap(({ loads }) => loads);
  const factors = new Map<ReferenceLoad, number[]>();
  let before = 0;
  for (const [i, { loads, factors: own }] of parts.entries()) {
    const row = Array<number>(all.length).fill(0);
    row.splice(before, loads.length, ...own);
    before += loads.length;
    factors.set(one.loads[i] as ReferenceLoad, row);
  }
  const hinges = one.crown_hinge ? [line.length / 2] : [];
  const hoop = { line, section, hinges, joints: [], bars: tieOf(one) };
  return { frame: new HoopFrame(hoop, all), factors };
}

const tieOf = ({ tie, E }: HoopCase): HoopBar[] =>
  tie === null
    ? []
    : [
        {
          from: { s: tie.s1 },
          to: { s: tie.s2 },
          fromEnd: "pinned",
          toEnd: "pinned",
          section: { A: tie.EA / E, I: 0, E },
          weight: 0,
        },
      ];
