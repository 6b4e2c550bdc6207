import { expect } from "vitest";
import type { PublishedValue } from "./published-case.ts";

/**
 * Compares a computed number with the printed one, both in the printed unit. Where the source is
 * held to be wrong, the number must lie outside the tolerance and inside the wider allowance: a
 * disagreement that has gone away is reported too.
 */
export function expectPublished(computed: number, published: PublishedValue): void {
  const { quantity, value, printed, unit, allowed, disagreement } = published;
  const off = Math.abs(computed - value);
  const words = `${quantity}: computed ${computed}, printed ${printed} ${unit}`;
  expect(Number.isFinite(computed), words).toBe(true);
  if (!disagreement) {
    expect(off, `${words}, allowed ${allowed}`).toBeLessThanOrEqual(allowed);
    return;
  }
  expect(off, `${words}: no disagreement any more`).toBeGreaterThan(allowed);
  expect(off, `${words}: ${disagreement.reason}`).toBeLessThanOrEqual(disagreement.allowed);
}
