/**
 * What each hoop foot takes of a load spread evenly along the house: a length, m, for a load of one
 * per metre. Between two hoops a load divides by the lever, so sum and moment are kept exactly; what
 * overhangs the end hoop turns about it, on the last two.
 *
 * @param feet hoop places in rising order, two or more, m
 * @param from where the load begins, m
 * @param to where it ends, m
 */
export function footShares(feet: readonly number[], from: number, to: number): Float64Array {
  const shares = new Float64Array(feet.length);
  const last = feet.length - 2;
  for (let bay = 0; bay <= last; bay += 1) {
    const [near, far] = [feet[bay] as number, feet[bay + 1] as number];
    const start = bay === 0 ? from : Math.max(from, near);
    const end = bay === last ? to : Math.min(to, far);
    if (end <= start) continue;
    const onFar = ((end - start) * ((start + end) / 2 - near)) / (far - near);
    shares[bay] = (shares[bay] as number) + (end - start) - onFar;
    shares[bay + 1] = (shares[bay + 1] as number) + onFar;
  }
  return shares;
}

/** What each hoop foot takes of a load at one place, by the lever of its bay. */
export function footSharesAt(feet: readonly number[], place: number): Float64Array {
  const shares = new Float64Array(feet.length);
  let bay = 0;
  while (bay < feet.length - 2 && place > (feet[bay + 1] as number)) bay += 1;
  const [near, far] = [feet[bay] as number, feet[bay + 1] as number];
  const onFar = (place - near) / (far - near);
  shares[bay] = 1 - onFar;
  shares[bay + 1] = onFar;
  return shares;
}

/** Foot forces of no sum that turn the house by one: in proportion to each foot's place, 1/m. */
export function turningShares(feet: readonly number[]): Float64Array {
  const middle = feet.reduce((sum, y) => sum + y, 0) / feet.length;
  const spread = feet.reduce((sum, y) => sum + (y - middle) ** 2, 0);
  return Float64Array.from(feet, (y) => (y - middle) / spread);
}

/** A couple of one in the end bay at the front or the back: a force pair at its two hoops, 1/m. */
export function endBayShares(feet: readonly number[], end: "front" | "back"): Float64Array {
  const shares = new Float64Array(feet.length);
  const near = end === "front" ? feet.length - 2 : 0;
  const bay = (feet[near + 1] as number) - (feet[near] as number);
  shares[near] = -1 / bay;
  shares[near + 1] = 1 / bay;
  return shares;
}
