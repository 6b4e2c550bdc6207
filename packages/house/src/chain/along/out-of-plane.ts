import { type HoopLine, type PlanePoint, pointOnLine, tangentOnLine } from "@hoopstay/frame";

/** A push along the house on the hoop: its place along it from the left foot, m, and size, N. */
export interface PushAlong {
  readonly s: number;
  readonly force: number;
}

/** What bends and twists a hoop that is pushed along the house, N m; what its feet carry. */
export interface OutOfPlane {
  /** Bending out of the plane and torsion at a place along the hoop from the left foot, m, in size. */
  readonly at: (s: number) => { readonly bending: number; readonly torsion: number };
  /** Of each foot: push, N; moment about the house's width and about the upright, N m, in size. */
  readonly foot: { readonly shear: number; readonly tipping: number; readonly torque: number };
}

/** Pieces of half a hoop. */
const pieces = 300;

/** The middle of a piece: its place along the hoop, its point, and the way the hoop runs there. */
interface Middle {
  readonly s: number;
  readonly point: PlanePoint;
  readonly along: PlanePoint;
}

const known = new WeakMap<HoopLine, readonly Middle[]>();

/** The pieces of a hoop's left half, made once for all pushes. */
function middlesOf(line: HoopLine): readonly Middle[] {
  const middles =
    known.get(line) ??
    Array.from({ length: pieces }, (_, piece): Middle => {
      const s = ((piece + 0.5) * line.length) / 2 / pieces;
      return { s, point: pointOnLine(line, s), along: tangentOnLine(line, s) };
    });
  known.set(line, middles);
  return middles;
}

/**
 * A hoop held fast at both feet under pushes along the house that are the same on its two halves.
 * By symmetry one unknown is left, the moment about the upright at the crown; least work gives it.
 * Tipping of the feet follows from statics alone. Sums over short straight pieces: about 1e-4 off.
 *
 * @param pushes on the left half, crown included with half its push
 * @param bending E I, N m2
 * @param twist G J, N m2
 */
export function outOfPlane(
  line: HoopLine,
  pushes: readonly PushAlong[],
  bending: number,
  twist: number,
): OutOfPlane {
  const loads = pushes.map(({ s, force }) => ({ s, force, ...pointOnLine(line, s) }));
  /** Moment of all pushes between the crown and a place, about it: about x and about the upright. */
  const pushed = (s: number, x: number, z: number): readonly [number, number] => {
    let [mx, mz] = [0, 0];
    for (const load of loads) {
      if (load.s < s) continue;
      mx -= (load.z - z) * load.force;
      mz += (load.x - x) * load.force;
    }
    return [mx, mz];
  };
  let [asked, gives] = [0, 0];
  for (const { s, point, along } of middlesOf(line)) {
    const [mx, mz] = pushed(s, point.x, point.z);
    const normal = mz * along.x - mx * along.z;
    const axial = mx * along.x + mz * along.z;
    asked += (normal * along.x) / bending + (axial * along.z) / twist;
    gives += along.x ** 2 / bending + along.z ** 2 / twist;
  }
  const crown = -asked / gives;
  const momentsAt = (s: number): readonly [number, number] => {
    const { x, z } = pointOnLine(line, s);
    const [mx, mz] = pushed(s, x, z);
    return [mx, mz + crown];
  };
  const [tipping, torque] = momentsAt(0);
  return {
    at: (place) => {
      const s = Math.min(place, line.length - place);
      const along = tangentOnLine(line, s);
      const [mx, mz] = momentsAt(s);
      return {
        bending: Math.abs(mz * along.x - mx * along.z),
        torsion: Math.abs(mx * along.x + mz * along.z),
      };
    },
    foot: {
      shear: loads.reduce((sum, { force }) => sum + Math.abs(force), 0),
      tipping: Math.abs(tipping),
      torque: Math.abs(torque),
    },
  };
}
