import type { House } from "../model/house-model.ts";
import { takeOff } from "../take-off/take-off.ts";

/**
 * A changed house that was weighed before the change: what its parts weigh more or less is added to
 * the measured weight. Its centre, where it was given, stays.
 */
export function measuredLikewise(before: House, after: House): House {
  const { measured } = before;
  if (!measured) return after;
  const [old, now] = [before, after].map((house) => takeOff({ ...house, measured: null }));
  if (!old || !now) return after;
  return {
    ...after,
    measured: {
      low: measured.low + now.low.W - old.low.W,
      high: measured.high + now.high.W - old.high.W,
      at: measured.at,
    },
    findings: [
      ...after.findings,
      "Weight: the measured one, with what the changed parts weigh more or less by the take-off.",
    ],
  };
}
