import type { BalancedForces } from "./balanced-forces.ts";

/*
 * By the theorem of least complementary energy, no forces of the supports that balance a load, each
 * within what it can do, hold less energy than the true ones. Any balance therefore bounds the energy
 * of each anchor, and by that its pull.
 */

/** Energy at most in rail, ground and anchors, N m. */
export function energyAtMost(
  { pulls, ground, bent }: BalancedForces,
  stiffness: readonly number[],
): number {
  let sum = ground + bent;
  for (let j = 0; j < pulls.length; j += 1) {
    const pull = pulls[j] as number;
    sum += (pull * pull) / (2 * (stiffness[j] as number));
  }
  return sum;
}

/**
 * Energy at most once one anchor is missing, its pull handed to two neighbours by the lever; infinite
 * where that would make one of them push.
 *
 * @param places of the anchors in rising order, m
 * @param bending E I of the rail, N m2
 */
export function energyWithout(
  balance: BalancedForces,
  missing: number,
  places: readonly number[],
  stiffness: readonly number[],
  bending: number,
): number {
  const { pulls, bent } = balance;
  const pull = pulls[missing] as number;
  const count = places.length;
  if (pull === 0) return energyAtMost(balance, stiffness);
  if (count < 3) return Number.POSITIVE_INFINITY;
  const near = missing === 0 ? 1 : missing - 1;
  const far = missing === 0 ? 2 : missing === count - 1 ? count - 3 : missing + 1;
  const x = places[missing] as number;
  const [xNear, xFar] = [places[near] as number, places[far] as number];
  const onFar = (pull * (x - xNear)) / (xFar - xNear);
  const [afterNear, afterFar] = [
    (pulls[near] as number) + pull - onFar,
    (pulls[far] as number) + onFar,
  ];
  if (afterNear < 0 || afterFar < 0) return Number.POSITIVE_INFINITY;
  const energy = (j: number, force: number): number => force ** 2 / (2 * (stiffness[j] as number));
  const springs =
    energyAtMost(balance, stiffness) -
    bent -
    energy(missing, pull) +
    energy(near, afterNear) -
    energy(near, pulls[near] as number) +
    energy(far, afterFar) -
    energy(far, pulls[far] as number);
  // The rail bends by a triangle more, its peak at the middle one of the three.
  const outer = missing === 0 || missing === count - 1;
  const peak = outer ? pull * Math.abs(x - xNear) : Math.abs(onFar * (xFar - x));
  const reach = Math.max(x, xNear, xFar) - Math.min(x, xNear, xFar);
  const triangle = (peak * peak * reach) / (6 * bending);
  return springs + (Math.sqrt(bent) + Math.sqrt(triangle)) ** 2;
}

/**
 * The greatest pull an anchor can have at a given energy, N: its own energy, and the least of what
 * must carry the rest: the other anchors where the load lifts, the ground where it presses.
 *
 * @param others stiffness of all other anchors together, N/m
 * @param ground stiffness of all the ground together, N/m
 */
function pullAtMost(
  energy: number,
  lift: number,
  own: number,
  others: number,
  ground: number,
): number {
  const alone = Math.sqrt(2 * own * energy);
  if (lift > 0 && alone >= lift) return alone;
  const rest = lift > 0 ? others : ground;
  const squared = 1 / own + 1 / rest;
  const half = lift / rest;
  const root = half * half - squared * (half * lift - 2 * energy);
  return (half + Math.sqrt(Math.max(0, root))) / squared;
}

/** Whether no anchor can pull more than is known of each, N, at a given energy. */
export function noneBeyond(
  energy: number,
  lift: number,
  stiffness: readonly number[],
  missing: number,
  ground: number,
  known: ArrayLike<number>,
): boolean {
  if (energy === Number.POSITIVE_INFINITY) return false;
  let all = 0;
  for (let j = 0; j < stiffness.length; j += 1) if (j !== missing) all += stiffness[j] as number;
  for (let j = 0; j < stiffness.length; j += 1) {
    if (j === missing) continue;
    const k = stiffness[j] as number;
    if (pullAtMost(energy, lift, k, all - k, ground) > (known[j] as number)) return false;
  }
  return true;
}
