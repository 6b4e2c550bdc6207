/**
 * Turns of `work` a second on this core: best of several rounds, because the machine is shared, and
 * what disturbs a round only slows it.
 */
export function perSecond(work: () => unknown, rounds: number, each: number): number {
  for (let warm = 0; warm < each; warm += 1) work();
  let best = 0;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    for (let turn = 0; turn < each; turn += 1) work();
    best = Math.max(best, (1000 * each) / (performance.now() - start));
  }
  return best;
}
