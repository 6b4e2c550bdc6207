/** A turn of the slope (rad) and how bad it is. */
export interface Turn {
  readonly at: number;
  readonly bad: number;
}

/** Turns nearer together than this are one, rad: a smooth peak is flat to 1e-14 over it. */
const hair = 1e-7;
/** Values nearer together than this are not told apart. */
const alike = 1e-13;
const rounds = 40;
const shorter = (3 - Math.sqrt(5)) / 2;

/**
 * Climbs the one peak between two turns, from a turn between them, by golden sections and by parabolas
 * through the three worst turns found (R. P. Brent, Algorithms for Minimization without Derivatives,
 * 1973, chapter 5; from memory). A peak that the first turn stands on, as where a tether begins to
 * help, is seen by its neighbours.
 */
export function climb(turn: (at: number) => Turn, from: number, start: Turn, to: number): void {
  let [low, high] = [from, to];
  let [worst, second, third] = [start, start, start];
  const take = (next: Turn): void => {
    if (next.bad > worst.bad) {
      if (next.at > worst.at) low = worst.at;
      else high = worst.at;
      [worst, second, third] = [next, worst, second];
      return;
    }
    if (next.at > worst.at) high = next.at;
    else low = next.at;
    if (second === worst || next.bad > second.bad) [second, third] = [next, second];
    else third = next;
  };
  take(turn(Math.max(low, start.at - hair)));
  take(turn(Math.min(high, start.at + hair)));
  let [step, before] = [0, 0];
  for (let round = 0; round < rounds && high - low > 3 * hair; round += 1) {
    if (worst.bad === Number.POSITIVE_INFINITY || third.bad >= worst.bad * (1 - alike)) return;
    const top = topOf(third, second, worst) - worst.at;
    const inside = worst.at + top > low + hair && worst.at + top < high - hair;
    if (inside && Math.abs(top) < before / 2) [before, step] = [Math.abs(step), top];
    else {
      const longer = high - worst.at > worst.at - low ? high - worst.at : low - worst.at;
      [before, step] = [Math.abs(longer), shorter * longer];
    }
    const far = Math.abs(step) < hair ? Math.sign(step) * hair : step;
    take(turn(worst.at + far));
  }
}

/** Where the parabola through three turns has its top; not a number where they lie on a line. */
function topOf(one: Turn, other: Turn, middle: Turn): number {
  const left = (one.at - middle.at) * (middle.bad - other.bad);
  const right = (other.at - middle.at) * (middle.bad - one.bad);
  const sum = (one.at - middle.at) * left - (other.at - middle.at) * right;
  return middle.at - sum / (2 * (right - left));
}
