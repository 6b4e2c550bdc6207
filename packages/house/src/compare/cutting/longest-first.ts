import type { CutProblem, Pattern } from "./cut-problem.ts";

/** A plan by hand: the longest piece left is cut from the first stick that has room for it. */
export function longestFirst({ size, cuts }: CutProblem): Pattern[] {
  const sticks: { room: number; pattern: number[] }[] = [];
  cuts.forEach(({ length, count }, place) => {
    let left = count;
    for (const stick of sticks) {
      const taken = Math.min(left, Math.floor(stick.room / length));
      stick.room -= taken * length;
      stick.pattern[place] = taken;
      left -= taken;
    }
    while (left > 0) {
      const taken = Math.min(left, Math.floor(size / length));
      const pattern = cuts.map((_, at) => (at === place ? taken : 0));
      sticks.push({ room: size - taken * length, pattern });
      left -= taken;
    }
  });
  return sticks.map(({ pattern }) => pattern);
}
