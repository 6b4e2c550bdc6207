import { convert, type System } from "@hoopstay/core";

const sixteenths = 16;

/** A length to cut: feet, inches and sixteenths as a tape shows them, or whole millimetres. */
export function cutLength(length: number, system: System): string {
  if (system === "si") return `${Math.round(length * 1000)} mm`;
  const parts = Math.round(convert(length, "length", "in") * sixteenths);
  const feet = Math.floor(parts / (12 * sixteenths));
  const inches = Math.floor(parts / sixteenths) - 12 * feet;
  const rest = parts % sixteenths;
  const part = rest === 0 ? "" : fraction(rest);
  const size = [inches === 0 && part !== "" ? "" : String(inches), part].filter(Boolean).join("-");
  if (feet === 0) return `${size} in`;
  return size === "0" ? `${feet} ft` : `${feet} ft ${size} in`;
}

function fraction(parts: number): string {
  let [above, below] = [parts, sixteenths];
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  return `${above}/${below}`;
}
