import type { LoggedPull } from "../model/site-ground.ts";

/**
 * A test speaks for tethers that pull the way it was pulled. Judgement: up to 10 degrees off; a test
 * without an angle is taken to have been pulled along the tether's line, as the log asks for.
 */
const sameWay = (10 * Math.PI) / 180;

/** The tests of a pull log that were pulled along a tether's line, and those that were not. */
export function testsAlong(
  tests: readonly LoggedPull[],
  angle: number,
): { readonly along: readonly LoggedPull[]; readonly aside: readonly LoggedPull[] } {
  const isAlong = (test: LoggedPull): boolean =>
    test.angle === null || Math.abs(test.angle - angle) <= sameWay + 1e-9;
  return { along: tests.filter(isAlong), aside: tests.filter((test) => !isAlong(test)) };
}
