/** A turn of the slope (rad) and how bad it is. */
export interface Turn {
  readonly at: number;
  readonly bad: number;
}

/** Turns nearer together than this are one, rad: a ridge falls by no more than some 1e-10 over it. */
const hair = 1e-9;
/** A smooth peak is flat over this, rad: its top is not looked for more closely. */
const flat = 1e-7;
/** Part by which values differ that are told apart. */
const alike = 1e-13;
const shorter = (3 - Math.sqrt(5)) / 2;

/**
 * Climbs the one peak between two turns, from a turn that is no better than either, by the tops of
 * parabolas and by golden sections in turn. A peak that it starts on, as where a tether begins to help,
 * is seen by its neighbours.
 */
export function climb(turn: (at: number) => Turn, from: Turn, start: Turn, to: Turn): void {
  let [low, worst, high] = [from, start, to];
  const take = (next: Turn): void => {
    if (next.bad > worst.bad) {
      if (next.at > worst.at) low = worst;
      else high = worst;
      worst = next;
    } else if (next.at > worst.at) high = next;
    else low = next;
  };
  take(turn(Math.max(low.at, start.at - hair)));
  take(turn(Math.min(high.at, start.at + hair)));
  const told = (one: Turn): boolean => one.bad < worst.bad * (1 - alike);
  let golden = false;
  while (high.at - low.at > 3 * hair && (told(low) || told(high))) {
    const [back, on] = [low.at - worst.at, high.at - worst.at];
    const longer = on > -back ? on : back;
    const step = golden ? shorter * longer : topOf(low, worst, high) - worst.at;
    golden = !golden;
    // Nor is it a step where the parabola has no top, as where the house does not hold at all.
    const least = Math.min(flat, shorter * Math.abs(longer));
    take(turn(worst.at + (Math.abs(step) >= least ? step : Math.sign(longer) * least)));
  }
}

/** Where the parabola through three turns has its top; it lies between the outer two. */
function topOf(low: Turn, middle: Turn, high: Turn): number {
  const left = (middle.at - low.at) * (middle.bad - high.bad);
  const right = (high.at - middle.at) * (middle.bad - low.bad);
  const weighed = (low.at + middle.at) * left + (middle.at + high.at) * right;
  return weighed / (2 * (left + right));
}
