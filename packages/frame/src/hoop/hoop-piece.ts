/** A point in the hoop's plane, m: x from windward to leeward, z up. */
export interface PlanePoint {
  readonly x: number;
  readonly z: number;
}

/** A straight piece of a hoop's centre line. */
export interface StraightPiece {
  readonly kind: "straight";
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

/**
 * A circular piece of a hoop's centre line, run clockwise: the angles are seen from its centre, in
 * rad from +x, counter-clockwise, and fall from the first to the last.
 */
export interface ArcPiece {
  readonly kind: "arc";
  readonly centre: PlanePoint;
  readonly radius: number;
  readonly fromAngle: number;
  readonly toAngle: number;
}

export type HoopPiece = StraightPiece | ArcPiece;

/** Where a piece starts, as given. */
export const startOf = (piece: HoopPiece): PlanePoint =>
  piece.kind === "straight" ? piece.from : onCircle(piece, piece.fromAngle);

/** Where a piece ends, as given. */
export const endOf = (piece: HoopPiece): PlanePoint =>
  piece.kind === "straight" ? piece.to : onCircle(piece, piece.toAngle);

/** Length of a piece, m. */
export const lengthOf = (piece: HoopPiece): number =>
  piece.kind === "straight"
    ? Math.hypot(piece.to.x - piece.from.x, piece.to.z - piece.from.z)
    : piece.radius * (piece.fromAngle - piece.toAngle);

const onCircle = ({ centre, radius }: ArcPiece, angle: number): PlanePoint => ({
  x: centre.x + radius * Math.cos(angle),
  z: centre.z + radius * Math.sin(angle),
});
