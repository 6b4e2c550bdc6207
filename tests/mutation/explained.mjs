import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";

/** Mutants that no test can tell from the source, each with its reason. */
export function readExplained(root) {
  const entries = parse(readFileSync(join(root, "tests/mutation/equivalent.yaml"), "utf8")) ?? [];
  for (const entry of entries) {
    const keys = Object.keys(entry).join();
    if (keys !== "file,line,from,to,reason") throw new Error(`equivalent.yaml: keys ${keys}`);
  }
  return entries;
}

/** The explanation of one mutant, found by the text of its line, so that lines may move. */
export function explanationOf(explained, { file, text, original, replacement }) {
  return explained.find(
    (entry) =>
      entry.file === file &&
      entry.line === text &&
      entry.from === original &&
      entry.to === plain(replacement),
  );
}

export const plain = (text) => text.replaceAll(/\s+/g, " ").trim();
