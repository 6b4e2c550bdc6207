/** The known word that differs least from a given one, where few letters differ. */
export function nearest(given: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.max(2, Math.floor(given.length / 3)) + 1;
  for (const word of known) {
    const distance = edits(given.toLowerCase(), word.toLowerCase());
    if (distance < least) {
      least = distance;
      best = word;
    }
  }
  return best;
}

function edits(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, place) => place);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}
