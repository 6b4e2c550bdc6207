/** Random choices that repeat: the same seed and place give the same ones. */
export class Random {
  private state: number;

  constructor(seed: number, place: number) {
    this.state =
      (Math.imul(seed ^ 0x9e37_79b9, 0x85eb_ca6b) ^ Math.imul(place + 1, 0xc2b2_ae35)) >>> 0;
  }

  /** A number from 0 up to 1: the mixing of mulberry32. */
  next(): number {
    this.state = (this.state + 0x6d2b_79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  below = (most: number): number => Math.floor(this.next() * most);
  chance = (share: number): boolean => this.next() < share;
  pick = <One>(from: readonly One[]): One => from[this.below(from.length)] as One;
}
