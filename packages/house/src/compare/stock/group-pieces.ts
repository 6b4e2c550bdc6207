import { measured, type Words } from "@hoopstay/core";
import type { Piece } from "../cutting/cut-problem.ts";
import type { HouseBending, Members } from "./house-pieces.ts";
import {
  type JointedMember,
  jointPlaces,
  lengthsBetween,
  mostBendingAtJoint,
  mostPlacedPieces,
} from "./joint-places.ts";
import { hair, piecesOfLine } from "./pieces-of-line.ts";

/** Pieces that members are made of, and what is to be said of their joints. */
export interface PieceChoice {
  readonly pieces: readonly Piece[];
  readonly findings: readonly Words[];
  /** Greatest bending share at a joint; nought where none is, or where it is not known. */
  readonly share: number;
}

const names: Readonly<Record<string, string>> = { hoops: "hoop", rails: "rail" };

function piecesOf({ what, count }: Members, lengths: readonly number[]): Piece[] {
  return lengths.map((length) => ({ what, length, count }));
}

const list = (places: readonly number[]): Words =>
  places.flatMap((place, at) => [at === 0 ? "" : " and ", measured(place, "length", 4)]);

function jointedWords(members: Members, { joints, lengths, share }: JointedMember): Words {
  const { what } = members;
  const from = what === "hoops" ? "along the tube from its left foot" : "from its back end";
  const bends =
    share === null
      ? "how it bends is not known here, so the pieces are equal"
      : share <= mostBendingAtJoint
        ? "it bends no more there than half of its most"
        : `${lengths.length > mostPlacedPieces ? "no place is looked for with so many" : "no better place was found"}: it bends ${Math.round(100 * share)} % of its most there`;
  const [each = 0] = lengths;
  const where: Words =
    lengths.length > mostPlacedPieces ? ["every ", measured(each, "length", 4)] : list(joints);
  return [
    `Each ${names[what] ?? what} is made of ${lengths.length} pieces, joined `,
    ...where,
    ` ${from}; ${bends}. Butt joints under a sleeve or plates are counted; what a drawn-in end takes is not. Its strength is checked only where the house file has the joint.`,
  ];
}

/** Joints as the house file has them, where a stick is long enough for every piece. */
function asToday(members: Members, stock: number): PieceChoice | null {
  const { joints, length } = members;
  if (!joints) return null;
  const lengths = lengthsBetween(joints, length);
  if (!lengths.every((piece) => piece > hair && piece <= stock + hair)) return null;
  const pieces = piecesOf(members, lengths);
  return { pieces, findings: [], share: 0 };
}

/** Ways to cut members of one kind from sticks of a length. */
export function pieceChoices(
  members: Members,
  stock: number,
  bending: HouseBending,
): readonly PieceChoice[] {
  const { what, length, count, bends, joints } = members;
  const today = asToday(members, stock);
  if (today) return [today];
  if (length <= stock + hair) {
    return [{ pieces: [{ what, length, count }], findings: [], share: 0 }];
  }
  if (bends === null) {
    const findings: Words[] = [[`${what}: longer than a stick; joined where it suits.`]];
    return [{ pieces: piecesOfLine(what, length, count, stock), findings, share: 0 }];
  }
  const spoilt: Words[] = joints
    ? [[`A stick is too short for the ${what} with the joints of the house file: joined anew.`]]
    : [];
  return jointPlaces(length, stock, bending[bends]).map((member) => ({
    pieces: piecesOf(members, member.lengths),
    findings: [...spoilt, jointedWords(members, member)],
    share: member.share ?? 0,
  }));
}
