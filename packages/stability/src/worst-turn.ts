/** One turn of the slope's direction as the search sees it. */
export interface Look {
  /** How bad it is, from 0 to infinite. */
  readonly bad: number;
  /** Whether anything within `half` of it (rad) may be worse than a number; never no where something is. */
  mayExceed(half: number, worst: number): boolean;
}

/** Turns near one another: `half` to either side of `at`. */
interface Span {
  readonly at: number;
  readonly half: number;
  readonly look: Look;
}

const quarter = Math.PI / 2;
/** A span is not halved any more where nothing in it is worse than the worst by more than this. */
const leeway = 1.01;
/** Or when it has been halved so often: a third of a degree to either side. */
const halvings = 8;
const rounds = 40;
/** What is nearer together than this is not told apart. */
const alike = 1e-12;
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * The worst turn of a slope's unknown direction, from straight along the wind to straight across it on
 * either side. Spans of turns are halved until each is shown to hold nothing worse than the worst
 * found, or hardly anything; the peaks among those that are left are then narrowed down.
 *
 * @param known only a turn worse than this is looked for
 */
export function worstTurn(lookAt: (turned: number) => Look, known: number): number {
  let [best, worst] = [0, known];
  const offer = (at: number, { bad }: Look): void => {
    if (bad > worst) [best, worst] = [at, bad];
  };
  const spanAt = (at: number, half: number): Span => ({ at, half, look: lookAt(at) });
  const kept: Span[] = [];
  let spans: Span[] = [spanAt(0, quarter)];
  for (let halved = 0; spans.length > 0; halved += 1) {
    const wide: Span[] = [];
    for (const span of spans) {
      const { at, half, look } = span;
      if (!look.mayExceed(half, worst)) continue;
      offer(at, look);
      const done = halved === halvings || !look.mayExceed(half, leeway * worst);
      (done ? kept : wide).push(span);
    }
    spans = wide.flatMap(({ at, half }) => [
      spanAt(at - half / 2, half / 2),
      spanAt(at + half / 2, half / 2),
    ]);
  }
  const open = kept.filter(({ half, look }) => look.mayExceed(half, worst));
  for (const [low, high] of peaks(open)) {
    narrow(
      (at) => {
        const look = lookAt(at);
        offer(at, look);
        return { at, bad: look.bad };
      },
      low,
      high,
    );
  }
  return best;
}

/** Where a span's middle is no better than its neighbours': from the middle of one to the other's. */
function peaks(spans: readonly Span[]): [number, number][] {
  const sorted = [...spans].sort((a, b) => a.at - b.at);
  return sorted.flatMap((span, place): [number, number][] => {
    const { at, half, look } = span;
    const beside = [sorted[place - 1], sorted[place + 1]].filter(
      (one) => one && Math.abs(one.at - at) < 1.001 * (one.half + half),
    ) as Span[];
    if (beside.some((one) => one.look.bad > look.bad)) return [];
    const reached = beside.map((one) => one.at);
    return [[Math.min(at - half, ...reached), Math.max(at + half, ...reached)]];
  });
}

interface Turn {
  readonly at: number;
  readonly bad: number;
}

/** Golden section between two turns, until nothing between them is told apart. */
function narrow(turn: (at: number) => Turn, from: number, to: number): void {
  let [low, high] = [turn(from), turn(to)];
  const within = (share: number) => turn(low.at + share * (high.at - low.at));
  let [inner, outer] = [within(1 - golden), within(golden)];
  for (let round = 0; round < rounds; round += 1) {
    const top = Math.max(inner.bad, outer.bad);
    if (Math.min(low.bad, high.bad, inner.bad, outer.bad) >= top * (1 - alike)) return;
    if (inner.bad > outer.bad) {
      [high, outer] = [outer, inner];
      inner = within(1 - golden);
    } else {
      [low, inner] = [inner, outer];
      outer = within(golden);
    }
  }
}
