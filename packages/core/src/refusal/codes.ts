/**
 * Every refusal of the program: stable code, exit code, and what it stands for. SAFETY.md lists
 * the same table and a test keeps the two together. Exit 2: the input is refused. Exit 3: the input
 * is sound but outside what is computed.
 */
export const refusalCodes = {
  "unit-missing": { exit: 2, meaning: "a number stands without its unit" },
  "unit-unknown": { exit: 2, meaning: "the unit is not in the closed list of spellings" },
  "wrong-dimension": { exit: 2, meaning: "the unit measures something else" },
  "not-a-number": { exit: 2, meaning: "the text is not a finite number with a unit" },
  "wrong-kind": { exit: 2, meaning: "a value of another kind stands where this one is expected" },
  "key-missing": { exit: 2, meaning: "a key that has no sensible default is missing" },
  "key-unknown": { exit: 2, meaning: "a key is not known here" },
  "key-duplicate": { exit: 2, meaning: "the same key stands twice" },
  "not-positive": { exit: 2, meaning: "a size that must be above zero is zero or negative" },
  "out-of-range": { exit: 2, meaning: "a value lies outside what is possible" },
  "sizes-disagree": { exit: 2, meaning: "two entries contradict each other" },
  "gauge-without-table": {
    exit: 2,
    meaning: "a gauge is given without the gauge table it is from",
  },
  "size-unknown": { exit: 2, meaning: "a catalogue size is not known" },
  "speed-without-basis": { exit: 2, meaning: "a wind speed does not say what kind of speed it is" },
  "yaml-broken": { exit: 2, meaning: "the file is not well-formed YAML or JSON" },
  "yaml-tab": { exit: 2, meaning: "a line is indented with a tab" },
  "file-unreadable": { exit: 2, meaning: "the file cannot be read" },
  "file-too-large": { exit: 2, meaning: "the file is larger than such a file can sensibly be" },
  "file-not-text": { exit: 2, meaning: "the file is not UTF-8 text" },
  "aliases-too-deep": { exit: 2, meaning: "YAML aliases multiply beyond any sensible use" },
  "variant-unchanged": { exit: 2, meaning: "a variant changes nothing of the house" },
  "case-unknown": { exit: 2, meaning: "no load case has the name asked for" },
  "command-unknown": { exit: 2, meaning: "the command line is not understood" },
  "report-unwritable": { exit: 2, meaning: "the report cannot be written where it was asked for" },
  "report-without-inputs": { exit: 2, meaning: "the page carries no files to make it again from" },
  "port-unusable": { exit: 2, meaning: "the page cannot be served on the port asked for" },
  "shape-outside": { exit: 3, meaning: "the hoop's shape is outside the arcs computed here" },
  "rise-outside-table": { exit: 3, meaning: "rise over span lies outside the arched-roof table" },
  "soil-without-bearing": { exit: 3, meaning: "the soil class has no published bearing value" },
  "ground-outside": {
    exit: 3,
    meaning: "the soil or the anchor lies outside the table or theory that would rate it",
  },
} as const satisfies Record<string, { exit: 2 | 3; meaning: string }>;

export type RefusalCode = keyof typeof refusalCodes;

/** The exit code of a set of complaints: 2 as soon as one input is refused, else 3. */
export function exitCodeOf(codes: readonly RefusalCode[]): 2 | 3 {
  return codes.some((code) => refusalCodes[code].exit === 2) ? 2 : 3;
}
