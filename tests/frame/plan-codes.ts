import { Refusal } from "@hoopstay/core";

/** The refusal that a call must end in. */
export function refusalOf(call: () => unknown): Refusal {
  try {
    call();
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("nothing was refused");
}

/** Codes and keys of everything a call complains about. */
export const codesOf = (call: () => unknown): string[] =>
  refusalOf(call).complaints.map(({ code, key }) => `${code} ${key}`);
