import { parse } from "yaml";
import { changeBytes } from "./change-bytes.ts";
import { changeStructure } from "./change-structure.ts";
import { gently, roughly } from "./change-text.ts";
import { Random } from "./random.ts";

/** Sound files to begin with, as texts. */
export interface SoundFiles {
  readonly houses: readonly string[];
  readonly sites: readonly string[];
}

/** Bytes of both files, and what may still be chosen for them. */
export interface FuzzedInput {
  readonly house: Uint8Array;
  readonly site: Uint8Array;
  readonly random: Random;
}

const trees = new Map<string, unknown>();

/** The tree of a sound file: made once, and copied by whoever changes it. */
function treeOf(text: string): unknown {
  if (!trees.has(text)) trees.set(text, parse(text));
  return trees.get(text);
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

function changed(text: string, random: Random): Uint8Array {
  const kind = random.below(20);
  if (kind < 7) {
    let made = text;
    for (let left = 1 + random.below(4); left > 0; left -= 1) made = gently(made, random);
    return bytesOf(made);
  }
  if (kind < 13) {
    let made = text;
    for (let left = random.pick([1, 1, 1, 2, 3]); left > 0; left -= 1) made = roughly(made, random);
    return bytesOf(made);
  }
  if (kind < 19) return bytesOf(changeStructure(treeOf(text), random));
  return changeBytes(bytesOf(text), random);
}

/** The input of a seed and a place: one of its files is changed, at times both. */
export function fuzzedInput(
  { houses, sites }: SoundFiles,
  seed: number,
  place: number,
): FuzzedInput {
  const random = new Random(seed, place);
  const [house, site] = [random.pick(houses), random.pick(sites)];
  const which = random.below(10);
  return {
    house: which < 7 || which === 9 ? changed(house, random) : bytesOf(house),
    site: which >= 7 ? changed(site, random) : bytesOf(site),
    random,
  };
}
