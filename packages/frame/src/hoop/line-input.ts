import { type Complaint, Refusal } from "@hoopstay/core";
import { complain, finite, positive } from "./complaints.ts";
import { endOf, type HoopPiece, lengthOf, startOf } from "./hoop-piece.ts";

/** Pieces that are apart by less than this part of their size do meet. */
const meeting = 1e-6;

/** Refuses, with every complaint at once, pieces that make no line. */
export function checkPieces(pieces: readonly HoopPiece[]): void {
  const complaints = pieces.flatMap((piece, index) => complaintsAbout(piece, `pieces.${index}`));
  if (pieces.length === 0) {
    complaints.push(complain("key-missing", "pieces", 0, "at least one piece", "add a piece"));
  }
  if (complaints.length === 0) complaints.push(...gaps(pieces));
  if (complaints.length > 0) throw new Refusal(complaints);
}

function complaintsAbout(piece: HoopPiece, key: string): Complaint[] {
  if (piece.kind === "straight") {
    const { from, to } = piece;
    const ends = [from.x, from.z, to.x, to.z].flatMap((value) => finite(key, value));
    return ends.length > 0 ? ends : positive(`${key}.length`, lengthOf(piece));
  }
  const { centre, radius, fromAngle, toAngle } = piece;
  const numbers = [
    ...[centre.x, centre.z, fromAngle, toAngle].flatMap((value) => finite(key, value)),
    ...positive(`${key}.radius`, radius),
  ];
  const turn = fromAngle - toAngle;
  if (numbers.length > 0 || (turn > 0 && turn < 2 * Math.PI)) return numbers;
  return [
    complain(
      "out-of-range",
      `${key}.toAngle`,
      toAngle,
      "an arc run clockwise, by less than a full turn: toAngle below fromAngle",
      "give the pieces from the left foot over the top to the right foot",
    ),
  ];
}

function gaps(pieces: readonly HoopPiece[]): Complaint[] {
  const size = pieces.reduce((sum, piece) => sum + lengthOf(piece), 0);
  return pieces.slice(1).flatMap((piece, index) => {
    const [end, next] = [endOf(pieces[index] as HoopPiece), startOf(piece)];
    const gap = Math.hypot(next.x - end.x, next.z - end.z);
    if (gap <= meeting * size) return [];
    const expected = "a piece that starts where the one before ends";
    return [complain("sizes-disagree", `pieces.${index + 1}`, gap, expected, "close the gap")];
  });
}
