import { Refusal } from "@hoopstay/core";

/** Codes and keys of everything a call complains about. */
export function codesOf(call: () => unknown): string[] {
  try {
    call();
  } catch (thrown) {
    if (thrown instanceof Refusal)
      return thrown.complaints.map(({ code, key }) => `${code} ${key}`);
    throw thrown;
  }
  throw new Error("nothing was refused");
}
