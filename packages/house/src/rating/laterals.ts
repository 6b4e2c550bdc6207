import { theoryCapacity } from "@hoopstay/ground";
import type { LateralHold } from "@hoopstay/stability";
import type { Site } from "../model/site-model.ts";
import type { Rating } from "./rating.ts";

/**
 * What the shaft of an anchor takes sideways besides the pull of its tether: only where the tether
 * is made fast to an upright shaft itself, and the ground is rated along it and across. Tests speak
 * for one direction and are not split.
 */
export function lateralOf(rating: Rating | null, site: Site): LateralHold | null {
  if (!rating || rating.allowable === null) return null;
  const { kind, basis, angle } = rating;
  const { body } = kind;
  if (!kind.direct || !kind.upright || body.kind !== "screw") return null;
  if (basis !== "theory" && basis !== "presumptive") return null;
  const { spacing } = rating;
  const placing = { testedHere: false, ...(spacing === null ? {} : { spacing }) };
  const along = theoryCapacity(body, site.soil, { fromShaft: 0, aboveGround: angle }, placing);
  const across = theoryCapacity(
    body,
    site.soil,
    { fromShaft: Math.PI / 2, aboveGround: angle },
    placing,
  );
  if (!along.rated || !across.rated) return null;
  const delta = Math.PI / 2 - angle;
  // No link of the chain takes more, whichever way it is pulled; together they keep to it as well.
  const links = Object.values(kind.links).map(({ workingLoadLimit }) => workingLoadLimit);
  const weakest = Math.min(...links.map((limit) => limit ?? Number.POSITIVE_INFINITY));
  return {
    Q: Math.min(along.allowable, weakest),
    H: Math.min(across.allowable, weakest),
    cosDelta: Math.cos(delta),
    sinDelta: Math.sin(delta),
  };
}
