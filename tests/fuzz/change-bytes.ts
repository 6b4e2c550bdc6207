import type { Random } from "./random.ts";

/** Bytes flipped, put in, taken out or cut off; what comes out may be no text at all. */
export function changeBytes(bytes: Uint8Array, random: Random): Uint8Array {
  const changed = [...bytes];
  for (let left = 1 + random.below(4); left > 0; left -= 1) {
    const at = random.below(changed.length + 1);
    const kind = random.below(5);
    if (kind === 0) changed[at] = (changed[at] ?? 0) ^ (1 << random.below(8));
    else if (kind === 1) changed.splice(at, 0, random.below(256));
    else if (kind === 2) changed.splice(at, 1 + random.below(8));
    else if (kind === 3) changed[at] = random.below(128);
    else if (random.chance(0.1)) changed.length = at;
    else changed.splice(at, 0, ...changed.slice(at, at + random.below(60)));
  }
  return Uint8Array.from(changed);
}
