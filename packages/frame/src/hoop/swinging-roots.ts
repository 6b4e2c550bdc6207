/** Most roots that a swinging function has within a right angle. */
export const mostRoots = 3;

/**
 * Roots of f(t) = (a + b t) cos t + (c + d t) sin t between 0 and `end`, which is less than half a
 * turn; ends are left out. All of them are found: with h = cos(t - end/2), positive throughout,
 *
 * - f'' + f = 2 (d cos t - b sin t) has one root at most, in closed form;
 * - between it and the ends, w = h f' - h' f rises or falls throughout, as w' = h (f'' + f);
 * - between the roots of w, f/h rises or falls throughout, as (f/h)' = w / h^2.
 *
 * @param into the roots, rising
 * @returns how many there are
 * @see derived: the factors of (D^2 + 1)^2, which sends every such f to zero
 */
export function swingingRoots(
  a: number,
  b: number,
  c: number,
  d: number,
  end: number,
  into: Float64Array,
): number {
  if (b === 0 && d === 0) {
    const only = angleOf(-a, c);
    into[0] = only;
    return only > 0 && only < end ? 1 : 0;
  }
  const turn = angleOf(d, b);
  if (!(turn > 0 && turn < end)) return addRoots(a, b, c, d, end, 0, end, into, 0);
  const count = addRoots(a, b, c, d, end, 0, turn, into, 0);
  return addRoots(a, b, c, d, end, turn, end, into, count);
}

/** Adds the roots between `low` and `high`, where w rises or falls throughout. */
function addRoots(
  a: number,
  b: number,
  c: number,
  d: number,
  end: number,
  low: number,
  high: number,
  into: Float64Array,
  count: number,
): number {
  const bend = rootBetween(a, b, c, d, end / 2, true, low, high);
  if (Number.isNaN(bend)) return addRoot(a, b, c, d, low, high, into, count);
  return addRoot(a, b, c, d, bend, high, into, addRoot(a, b, c, d, low, bend, into, count));
}

/** Adds the root between two places, or at the first, where two stretches meet unless it is 0. */
function addRoot(
  a: number,
  b: number,
  c: number,
  d: number,
  low: number,
  high: number,
  into: Float64Array,
  count: number,
): number {
  const meets = low > 0 && valueAt(a, b, c, d, 0, false, low) === 0;
  const root = meets ? low : rootBetween(a, b, c, d, 0, false, low, high);
  if (Number.isNaN(root)) return count;
  into[count] = root;
  return count + 1;
}

/**
 * The root of f, or of w, between two places: Newton's steps, halving where they lead out. NaN where
 * the signs at the two places do not differ.
 */
function rootBetween(
  a: number,
  b: number,
  c: number,
  d: number,
  middle: number,
  bends: boolean,
  from: number,
  to: number,
): number {
  let [low, high] = [from, to];
  const atLow = valueAt(a, b, c, d, middle, bends, low);
  const atHigh = valueAt(a, b, c, d, middle, bends, high);
  if (!(atLow * atHigh < 0)) return Number.NaN;
  let t = low + ((high - low) * atLow) / (atLow - atHigh);
  const rounding = 1e-14 * to;
  while (high - low > rounding) {
    const value = valueAt(a, b, c, d, middle, bends, t);
    if (value > 0 === atLow > 0) low = t;
    else high = t;
    const step = value / slopeAt(a, b, c, d, middle, bends, t);
    if (Math.abs(step) <= rounding) return t;
    const next = t - step;
    t = next > low && next < high ? next : (low + high) / 2;
  }
  return t;
}

function valueAt(
  a: number,
  b: number,
  c: number,
  d: number,
  middle: number,
  bends: boolean,
  t: number,
): number {
  const [cos, sin] = [Math.cos(t), Math.sin(t)];
  const value = (a + b * t) * cos + (c + d * t) * sin;
  if (!bends) return value;
  const slope = (b + c + d * t) * cos + (d - a - b * t) * sin;
  return slope * Math.cos(t - middle) + value * Math.sin(t - middle);
}

function slopeAt(
  a: number,
  b: number,
  c: number,
  d: number,
  middle: number,
  bends: boolean,
  t: number,
): number {
  const [cos, sin] = [Math.cos(t), Math.sin(t)];
  if (bends) return 2 * (d * cos - b * sin) * Math.cos(t - middle);
  return (b + c + d * t) * cos + (d - a - b * t) * sin;
}

/** Angle from 0 to pi whose tangent is y / x. */
function angleOf(y: number, x: number): number {
  const angle = Math.atan2(y, x);
  return angle < 0 ? angle + Math.PI : angle;
}
