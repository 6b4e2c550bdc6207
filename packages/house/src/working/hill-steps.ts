import { type Chapter, taken } from "@hoopstay/core";
import {
  countedLength,
  countedSteepness,
  type Exposure,
  type Hill,
  hillDistanceFactor,
  hillFactor,
  hillFactorOf,
  hillHeightFactor,
  hillPlace,
  hillRise,
  hillShapeFactor,
  hillSteepness,
  leastHillRise,
  noHillCitation,
} from "@hoopstay/load";

const told = (met: boolean) => ({
  note: met ? "met" : "not met; it counts all the same, safe side",
});

const noNumber = { note: "of an escarpment: near the crest, without a number" };

/** The conditions under which a hill counts, and its factor at height z, step by step. */
export function hillSteps(
  chapter: Chapter,
  hill: Hill | undefined,
  exposure: Exposure,
  z: number,
): number {
  if (!hill) {
    const origin = "no hill is entered";
    const one = taken(origin, "no-hill", "K_zt", hillFactor.name, 1, "ratio", noHillCitation);
    return chapter.work(one, []);
  }
  const { height, halfLength, distance, shape } = hill;
  const least = leastHillRise(exposure);
  const near = distance === undefined ? 0 : hillPlace.evaluate(distance, halfLength);
  if (distance !== undefined)
    chapter.work(
      hillPlace,
      [distance, halfLength],
      shape === "escarpment" ? noNumber : told(near <= 1),
    );
  const steep = hillSteepness.evaluate(height, halfLength) >= 1;
  chapter.work(hillSteepness, [height, halfLength], told(steep));
  chapter.work(hillRise, [height, least], told(height >= least));
  const { k, mu, gamma, placeKnown } = hillFactorOf(hill, exposure, z);
  const steepness = chapter.work(countedSteepness, [height, halfLength]);
  const length = chapter.work(countedLength, [halfLength, height]);
  const k1 = chapter.work(hillShapeFactor, [k, steepness], {
    note: `k, mu and gamma of the row: ${shape}, exposure ${exposure}`,
  });
  const k2 = placeKnown ? chapter.work(hillDistanceFactor, [distance ?? 0, mu, length]) : 1;
  const k3 = placeKnown ? chapter.work(hillHeightFactor, [gamma, z, length]) : 1;
  const where = placeKnown ? "" : "; place on the hill unknown: K_2 = K_3 = 1";
  const upwind =
    "conditions 1 and 2, the ground upwind, are not asked for: taken as met, safe side";
  return chapter.work(hillFactor, [k1, k2, k3], { note: `${upwind}${where}` });
}
