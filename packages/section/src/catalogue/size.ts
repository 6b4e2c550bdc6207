import type { Citation } from "@hoopstay/core";
import type { Angle, RectangularTube, RoundTube, Tube } from "../tube/tube.ts";

/** A section without its finish. */
export type Shape = Omit<RoundTube, "galvanized"> | Omit<RectangularTube, "galvanized"> | Angle;

/**
 * One size of the trade: its designation and dimensions, nothing more. Every property is computed.
 * `aliases` are other spellings that mean the same size and no other.
 */
export interface CatalogueSize {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly shape: Shape;
  readonly citation: Citation;
}

/**
 * The section of a catalogue size with its finish.
 *
 * @param size catalogue size
 * @param galvanized whether it is hot-dip galvanized; an angle ignores it
 * @returns section, m
 */
export function tubeOfSize(size: CatalogueSize, galvanized: boolean): Tube {
  const { shape } = size;
  return shape.kind === "angle" ? shape : { ...shape, galvanized };
}
