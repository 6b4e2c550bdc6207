import { cite, constant } from "@hoopstay/core";

/** A stub standing on the rail, free above: its effective length over its height. */
export const cantileverFactor = constant(
  "cantilever-factor",
  "K",
  "effective length over length, held below and free above",
  2.1,
  "ratio",
  cite("aisc-360-22", "commentary table C-A-7.1, case (e), recommended value", "memory"),
);
