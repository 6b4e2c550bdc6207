import type { Complaint } from "@hoopstay/core";

/** HTML, nothing where a text is sound, or what is complained of. */
export type Made = string | readonly Complaint[];

/** What was asked of an engine and is not made yet, by number. */
const asked = new Map<number, (made: Made) => void>();
let count = 0;

/** Sends a request under a number of its own, and waits for what is made of it. */
export function request(send: (ask: number) => void): Promise<Made> {
  count += 1;
  const ask = count;
  send(ask);
  return new Promise((settle) => asked.set(ask, settle));
}

export function settle(ask: number, made: Made): void {
  asked.get(ask)?.(made);
  asked.delete(ask);
}
