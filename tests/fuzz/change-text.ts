import { dimensions, spellingsOf } from "@hoopstay/core";
import { factors, oddTexts } from "./odd-values.ts";
import type { Random } from "./random.ts";

type Change = (text: string, random: Random) => string;

const units = dimensions.flatMap((dimension) => spellingsOf(dimension));

const splice = (text: string, at: number, gone: number, put: string): string =>
  text.slice(0, at) + put + text.slice(at + gone);

/** Replaces one of the matches of a pattern. */
function oneMatch(
  text: string,
  random: Random,
  pattern: RegExp,
  put: (was: string) => string,
): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const match = random.pick(found);
  return splice(text, match.index, match[0].length, put(match[0]));
}

const number = /(?<![\w.#])\d+(?:\.\d+)?(?![\w.])/g;
const afterNumber = /(?<=\d )(?:[a-z]+(?:[-/][a-z]+)?\d?|%)(?=[ ,}\n])/g;

/** A number of a file another one of near its size, so that most files stay sound. */
export const gently: Change = (text, random) =>
  oneMatch(text, random, number, (was) => {
    const made = Number(was) * random.pick(factors.slice(0, 8));
    return String(
      /^\d+$/.test(was) && random.chance(0.5) ? Math.round(made) : Number(made.toPrecision(4)),
    );
  });

const wildNumber: Change = (text, random) =>
  oneMatch(text, random, number, (was) => {
    const made = Number(was) * random.pick(factors);
    return random.chance(0.2) ? random.pick(oddTexts) : String(made);
  });

const otherUnit: Change = (text, random) =>
  oneMatch(text, random, afterNumber, () => random.pick(units));

/** The value of a line or of a pair in braces. */
const oddScalar: Change = (text, random) =>
  oneMatch(text, random, /(?<=: )[^,{}[\]\n#]+/g, () => random.pick(oddTexts));

/** The value of one key in the place of another's. */
const transplant: Change = (text, random) => {
  const values = text.match(/(?<=: )[^,{}[\]\n#]+/g) ?? ["x"];
  return oneMatch(text, random, /(?<=: )[^,{}[\]\n#]+/g, () => random.pick(values));
};

const renamedKey: Change = (text, random) =>
  oneMatch(text, random, /\b[a-z_]+(?=:)/g, (was) =>
    random.pick([
      was.toUpperCase(),
      `${was}s`,
      was.slice(1),
      `"${was}"`,
      "",
      "__proto__",
      `${was} `,
    ]),
  );

function lines(text: string, random: Random, change: (all: string[], at: number) => void): string {
  const all = text.split("\n");
  change(all, random.below(all.length));
  return all.join("\n");
}

const lineTwice: Change = (text, random) =>
  lines(text, random, (all, at) => all.splice(random.below(all.length), 0, all[at] as string));
const lineGone: Change = (text, random) => lines(text, random, (all, at) => all.splice(at, 1));
const linesSwapped: Change = (text, random) =>
  lines(text, random, (all, at) => {
    const other = random.below(all.length);
    [all[at], all[other]] = [all[other] as string, all[at] as string];
  });
const indented: Change = (text, random) =>
  lines(text, random, (all, at) => {
    all[at] = random.pick([" ", "  ", "\t", "- ", "\u00a0"]) + (all[at] as string);
  });
const anchored: Change = (text, random) =>
  lines(text, random, (all, at) => {
    all[at] = (all[at] as string).replace(/: (?=\S)/, ": &a ");
    const next = Math.min(all.length - 1, at + 1);
    all[next] = (all[next] as string).replace(/: .*/, ": *a");
  });

const signs = [
  "{",
  "}",
  "[",
  "]",
  ":",
  ",",
  "#",
  '"',
  "'",
  "\n",
  "\t",
  "\u0000",
  "\ufeff",
  "\u202e",
  "é",
  "-",
  "&",
  "*",
];

const signPut: Change = (text, random) =>
  splice(text, random.below(text.length + 1), random.below(2), random.pick(signs));
const cut: Change = (text, random) => text.slice(0, random.below(text.length + 1));
const middleGone: Change = (text, random) =>
  splice(text, random.below(text.length + 1), random.below(80), "");
const partTwice: Change = (text, random) => {
  const at = random.below(text.length + 1);
  return splice(text, at, 0, text.slice(at, at + random.below(400)));
};
const carriage: Change = (text) => text.replaceAll("\n", "\r\n");
const oldMac: Change = (text) => text.replaceAll("\n", "\r");
const marked: Change = (text) => `\ufeff${text}`;
const headed: Change = (text, random) =>
  random.pick(["---\n", "%YAML 1.1\n---\n", "...\n", "\n\n#\n", "- "]) + text;
const tailed: Change = (text, random) =>
  text +
  random.pick([
    "\n---\n",
    "...\n",
    "\nx",
    "}",
    `\nextra: [${"[".repeat(3000)}`,
    "\n<<: {house: x}\n",
    "\nhouse: again\n",
  ]);
const empty: Change = (_, random) =>
  random.pick(["", "\n", " ", "null", "[]", "{}", "#", "house", "1", "~", "---"]);
const laughs: Change = (text) =>
  `${text}\na1: &a1 [x, x, x, x, x, x, x, x, x]\n${[1, 2, 3, 4, 5, 6]
    .map((n) => `a${n + 1}: &a${n + 1} [${Array.from({ length: 9 }, () => `*a${n}`).join(", ")}]`)
    .join("\n")}\n`;

const rough: readonly Change[] = [
  ...[wildNumber, wildNumber, otherUnit, otherUnit, oddScalar, oddScalar, transplant, transplant],
  ...[
    renamedKey,
    lineTwice,
    lineGone,
    lineGone,
    linesSwapped,
    indented,
    anchored,
    signPut,
    signPut,
  ],
  ...[cut, middleGone, partTwice, carriage, marked, headed, tailed],
];
const rare: readonly Change[] = [oldMac, empty, laughs, cut];

/** One change of a text that nobody asks what it leads to. */
export const roughly: Change = (text, random) =>
  random.pick(random.chance(0.04) ? rare : rough)(text, random);
