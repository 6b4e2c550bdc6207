import type { Worksheet } from "../connection/common/worksheet.ts";
import {
  interactionEnvelope,
  largeAxialInteraction,
  smallAxialInteraction,
  torsionInteraction,
} from "./interaction-formulas.ts";

/** P_r/P_c from which axial force counts in full (H1.1). */
const largeAxial = 0.2;
/** T_r/T_c up to which torsion is left out (H3.2). */
export const smallTorsion = 0.2;

const formOf = (axialRatio: number): typeof largeAxialInteraction =>
  axialRatio >= largeAxial ? largeAxialInteraction : smallAxialInteraction;

/**
 * Share of a section's strength used by axial force and bending about both axes; up to 1 it holds.
 * Numbers in, number out, nothing made. Signs do not matter; the axial strength is that of the
 * direction at hand. Moments are those of second-order (`momentAmplifier`). At P_r/P_c 0.2 the two
 * forms meet only where both are 1: below 1 the printed share jumps there.
 *
 * For a round tube the resultant of both moments may be given as one, which is exact; the sum here
 * is on the safe side.
 *
 * Source: AISC 360-22, H1.1 and H1.2.
 *
 * @param axial P_r, N, and the strengths of one method, N and N m, above zero
 * @returns ratio
 * @example interaction(400, 1130, 250, 642, 80, 311) // 0.928 (Design Examples, H.1B)
 */
export function interaction(
  axial: number,
  axialStrength: number,
  momentX: number,
  strengthX: number,
  momentY: number,
  strengthY: number,
): number {
  const Pr = Math.abs(axial);
  const Mrx = Math.abs(momentX);
  const Mry = Math.abs(momentY);
  return formOf(Pr / axialStrength).evaluate(Pr, axialStrength, Mrx, strengthX, Mry, strengthY);
}

/** The same share, worked on a sheet. */
export function workInteraction(
  [axial, axialStrength]: readonly [number, number],
  [momentX, strengthX]: readonly [number, number],
  [momentY, strengthY]: readonly [number, number],
  sheet: Worksheet,
): number {
  const Pr = Math.abs(axial);
  const moments = [Math.abs(momentX), strengthX, Math.abs(momentY), strengthY] as const;
  return sheet.work(formOf(Pr / axialStrength), [Pr, axialStrength, ...moments]);
}

/**
 * The larger of both forms of H1-1. It is above 1 exactly where `interaction` is, never below it
 * up to there, continuous, and grows in proportion to the load: forces may grow by one over it.
 *
 * @param axialRatio axial force over its strength
 * @param momentRatioX moment over its strength, about x, and about y
 * @returns ratio
 * @example interactionReach(0.2, 0.9, 0) // 1
 */
export function interactionReach(
  axialRatio: number,
  momentRatioX: number,
  momentRatioY: number,
): number {
  return interactionEnvelope.evaluate(
    Math.abs(axialRatio),
    Math.abs(momentRatioX),
    Math.abs(momentRatioY),
  );
}

/**
 * Share of a tube's strength used by everything at once. Torsion up to a fifth of its strength is
 * left out by the standard, and shear with it; the share jumps there.
 *
 * Source: AISC 360-22, H3.2; H1.1 by its larger form.
 *
 * @param axialRatio each force over its own strength
 * @returns ratio; up to 1 it holds
 * @example interactionWithTorsion(0.1, 0.3, 0.1, 0.1, 0.4) // 0.1 + 0.3 + 0.1 + 0.5 squared
 */
export function interactionWithTorsion(
  axialRatio: number,
  momentRatioX: number,
  momentRatioY: number,
  shearRatio: number,
  torsionRatio: number,
): number {
  if (Math.abs(torsionRatio) <= smallTorsion) {
    return interactionReach(axialRatio, momentRatioX, momentRatioY);
  }
  return torsionInteraction.evaluate(
    Math.abs(axialRatio),
    Math.abs(momentRatioX),
    Math.abs(momentRatioY),
    Math.abs(shearRatio),
    Math.abs(torsionRatio),
  );
}
