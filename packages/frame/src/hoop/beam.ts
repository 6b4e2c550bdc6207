import { power } from "@hoopstay/core";
import type { Hoop } from "./hoop.ts";

/** A way to move that is softer than this part of the beam below hangs on rounding alone. */
export const loose = 1e-6;

/**
 * Stiffness of a simple beam of the hoop's section and developed length against a force in its
 * middle, N/m: the scale of how softly a hoop may bend.
 */
export const beamStiffness = ({ line, section }: Hoop): number =>
  (48 * section.E * section.I) / power(line.length, 3);
