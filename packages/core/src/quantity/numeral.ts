/** An unsigned number at the start of a text, and what follows it. */
export interface Numeral {
  readonly ok: true;
  readonly value: number;
  readonly typed: string;
  readonly rest: string;
  /** One comma and no point: 1,200 is twelve hundred to some and one and a fifth to others. */
  readonly loneComma: boolean;
}

export type NumeralRead = Numeral | { ok: false; problem: "garbled" | "out of reach" | "comma" };

const PLAIN = /^(?:\d+(?:\.\d+)?|\.\d+)$/;
const GROUPED = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;
const RATIONAL = /^(?:(\d+)(?: ?- | |-))?(\d+) ?\/ ?(\d+)(?![\d.,])/;

const garbled = { ok: false, problem: "garbled" } as const;
const outOfReach = { ok: false, problem: "out of reach" } as const;

function rational(text: string): NumeralRead | undefined {
  const found = RATIONAL.exec(text);
  if (!found) return undefined;
  const [typed, whole, over, under] = found;
  const [top, bottom] = [Number(over), Number(under)];
  // A mixed number's fraction is below one: 16-18/2 is no length.
  if (bottom === 0 || (whole !== undefined && top >= bottom)) return garbled;
  const value = (Number(whole ?? 0) * bottom + top) / bottom;
  if (!Number.isFinite(value)) return outOfReach;
  return { ok: true, value, typed, rest: text.slice(typed.length).trim(), loneComma: false };
}

/** Reads 18, 2.375, .5, 1,200, 1.2e5, 3/16, 1-5/8 or 1 5/8 from the start of a plain text. */
export function readNumeral(text: string): NumeralRead {
  const fraction = rational(text);
  if (fraction) return fraction;
  const digits = /^[\d.,]+/.exec(text)?.[0];
  if (digits === undefined) return garbled;
  const plain = PLAIN.test(digits);
  if (!plain && !GROUPED.test(digits))
    return digits.includes(",") ? { ok: false, problem: "comma" } : garbled;
  const power = plain ? (/^e[+-]?\d+/i.exec(text.slice(digits.length))?.[0] ?? "") : "";
  const value = Number(digits.replaceAll(",", "") + power);
  const vanished = value === 0 && /[1-9]/.test(digits);
  if (!Number.isFinite(value) || vanished) return outOfReach;
  const typed = digits + power;
  const loneComma = /^[^,.]*,[^,.]*$/.test(digits);
  return { ok: true, value, typed, rest: text.slice(typed.length).trim(), loneComma };
}
