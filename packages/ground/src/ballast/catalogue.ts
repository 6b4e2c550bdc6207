import { FOOT, power } from "@hoopstay/core";
import { type BallastMaterial, ballastDensities } from "./weight-densities.ts";

const unitVolumes = { gal: 231 * power(FOOT / 12, 3), L: 1e-3, ft3: power(FOOT, 3) } as const;

/** A piece of ballast by its volume, in the unit the trade sells it by. */
export interface BallastPiece {
  readonly id: string;
  readonly name: string;
  readonly material: BallastMaterial;
  readonly volume: number;
  readonly unit: keyof typeof unitVolumes;
}

/** Common pieces, full. Barrels and tanks without their own weight, on the safe side. */
export const ballastPieces: readonly BallastPiece[] = [
  { id: "drum-water", name: "55 gal drum of water", material: "water", volume: 55, unit: "gal" },
  { id: "drum-sand", name: "55 gal drum of dry sand", material: "sand", volume: 55, unit: "gal" },
  { id: "tote-275", name: "275 gal tote of water", material: "water", volume: 275, unit: "gal" },
  { id: "tote-1000", name: "1000 L tote of water", material: "water", volume: 1000, unit: "L" },
  {
    id: "block-2-2-4",
    name: "concrete block 2 x 2 x 4 ft",
    material: "concrete",
    volume: 2 * 2 * 4,
    unit: "ft3",
  },
  {
    id: "block-2-2-6",
    name: "concrete block 2 x 2 x 6 ft",
    material: "concrete",
    volume: 2 * 2 * 6,
    unit: "ft3",
  },
];

/** Volume of a full piece, m3. */
export const volumeOfPiece = ({ volume, unit }: BallastPiece): number => volume * unitVolumes[unit];

/** Weight of a full piece in air, N. Weigh it where you can. */
export const weightOfPiece = (piece: BallastPiece): number =>
  ballastDensities[piece.material].value * volumeOfPiece(piece);
