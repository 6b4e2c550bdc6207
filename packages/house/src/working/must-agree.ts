/**
 * Stops where the working of something and what was computed of it part.
 *
 * @param scale size beside which a difference of 1e-9 is none
 * @throws Error naming what disagrees; no report is made of it
 */
export function mustAgree(what: string, worked: number, computed: number, scale: number): void {
  if (Math.abs(worked - computed) <= 1e-9 * scale) return;
  throw new Error(`the working of ${what} disagrees with what was computed`);
}
