import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { explanationOf, plain } from "./explained.mjs";
import { dead } from "./try-mutants.mjs";

const place = "tests/mutation/record.json";

/** What the last whole run of each package found, by file. */
export function readRecord(root) {
  const path = join(root, place);
  return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : {};
}

export function writeRecord(root, record) {
  const packages = Object.entries(record).map(([name, { files, ...totals }]) => {
    const lines = Object.entries(files).map((file) =>
      file.map((one) => JSON.stringify(one)).join(": "),
    );
    const head = JSON.stringify(totals).slice(0, -1);
    return `${JSON.stringify(name)}: ${head}, "files": {\n${lines.join(",\n")}\n}}`;
  });
  writeFileSync(join(root, place), `{\n${packages.join(",\n")}\n}\n`);
}

export const digestOf = (root, file) =>
  createHash("sha256")
    .update(readFileSync(join(root, file)))
    .digest("hex")
    .slice(0, 16);

/** Counts of one file's mutants. */
export function countsOf(root, file, mutants, explained) {
  const alive = mutants.filter(({ fate }) => !dead(fate));
  return {
    digest: digestOf(root, file),
    mutants: mutants.length,
    killed: mutants.filter(({ fate }) => fate === "killed").length,
    endless: mutants.filter(({ fate }) => fate === "endless").length,
    survived: alive.filter(({ fate }) => fate === "survived").length,
    notCovered: alive.filter(({ fate }) => fate === "not covered").length,
    explained: alive.filter((mutant) => explanationOf(explained, mutant)).length,
    seconds: Math.round(mutants.reduce((sum, { ms }) => sum + ms, 0) / 1000),
    alive: alive.map(nameOf),
  };
}

const short = (text) => (plain(text).length > 70 ? `${plain(text).slice(0, 70)}...` : plain(text));

/** A mutant within its file: line, what stood there, what stands there now. */
export const nameOf = ({ line, original, replacement }) =>
  `${line}: ${short(original)} -> ${short(replacement)}`;

/**
 * Counts of a file after those alive have been tried again; with them are tried dead ones of the same
 * name.
 */
export function recounted(before, again) {
  const { survived, notCovered, explained, alive } = again;
  const dead = before.mutants - survived - notCovered;
  const endless = Math.min(dead, before.endless + again.endless);
  return { ...before, killed: dead - endless, endless, survived, notCovered, explained, alive };
}

const counted = ["mutants", "killed", "endless", "survived", "notCovered", "explained", "seconds"];

/** Sums over files, and the share killed in percent: of all mutants, and of those not explained. */
export function totalsOf(files) {
  const sums = Object.fromEntries(
    counted.map((key) => [key, Object.values(files).reduce((sum, file) => sum + file[key], 0)]),
  );
  const kills = sums.killed + sums.endless;
  return {
    ...sums,
    raw: share(kills, sums.mutants),
    adjusted: share(kills, sums.mutants - sums.explained),
  };
}

const share = (part, whole) => (whole === 0 ? 100 : Math.floor((1000 * part) / whole) / 10);
