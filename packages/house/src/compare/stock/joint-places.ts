import { fewestPieces, hair } from "./pieces-of-line.ts";

/** Bending at a place along a member, as a part of its greatest; for wind from either side. */
export type BendingShare = (along: number) => number;

/** A joint is looked for at every sixtieth of a member. */
const steps = 60;

/**
 * Judged: a joint is weaker than the tube, so it stands where the member bends no more than half of
 * its most. It only decides where pieces of a cut list end.
 */
export const mostBendingAtJoint = 0.5;
/** Joints of more pieces than this are spaced evenly. */
export const mostPlacedPieces = 4;
/** No piece is shorter than this part of a stick. */
const shortestPart = 1 / 8;

/** One way to make a member of pieces: places of the joints from its left or back end, m. */
export interface JointedMember {
  readonly joints: readonly number[];
  readonly lengths: readonly number[];
  /** Greatest bending share at a joint; null where it is not known. */
  readonly share: number | null;
}

export const lengthsBetween = (joints: readonly number[], length: number): number[] => {
  const ends = [0, ...joints, length];
  return ends.slice(1).map((end, at) => end - (ends[at] as number));
};

/** Joints that a single place tells: alone, or with its mirror image, and the middle where it is even. */
function jointsAt(place: number, length: number, pieces: number): number[] {
  if (pieces === 2) return [place];
  return pieces === 3 ? [place, length - place] : [place, length / 2, length - place];
}

const equalJoints = (length: number, pieces: number): number[] =>
  Array.from({ length: pieces - 1 }, (_, at) => ((at + 1) * length) / pieces);

/**
 * Ways to make a member of the fewest pieces that sticks of a length allow. Where its bending is
 * known, only joints at places of little bending are offered; where there is none, the place that
 * bends least. Where it is not known, equal pieces.
 *
 * @param length of the member, m, longer than `stock`
 */
export function jointPlaces(
  length: number,
  stock: number,
  bending: BendingShare | null,
): JointedMember[] {
  const pieces = fewestPieces(length, stock);
  const made = (joints: readonly number[]): JointedMember => ({
    joints,
    lengths: lengthsBetween(joints, length),
    share: bending && Math.max(...joints.map(bending)),
  });
  const equal = made(equalJoints(length, pieces));
  if (!bending || pieces > mostPlacedPieces) return [equal];
  const offered = [equal];
  const places = Array.from({ length: steps + 1 }, (_, step) => (step * length) / steps);
  for (const place of [stock, ...places]) {
    if (place <= 0 || place >= (pieces === 2 ? length : length / 2)) continue;
    const one = made(jointsAt(place, length, pieces));
    if (one.lengths.every((piece) => piece >= shortestPart * stock && piece <= stock + hair))
      offered.push(one);
  }
  const good = offered.filter(({ share }) => (share ?? 0) <= mostBendingAtJoint);
  if (good.length > 0) return good;
  return [offered.reduce((a, b) => ((b.share ?? 0) < (a.share ?? 0) ? b : a))];
}
