import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Instrumenter } from "@stryker-mutator/instrumenter";

/**
 * Words are held by other tests: printed expressions by the second evaluation, ids and sentences by
 * the golden reports. Every other mutator is at work.
 */
const excludedMutations = ["StringLiteral"];

const silent = {
  isDebugEnabled: () => false,
  debug() {},
  info() {},
};

/** Sources of a package, as paths from the root. */
export function sourcesOf(root, name) {
  const folder = `packages/${name}/src`;
  return readdirSync(join(root, folder), { recursive: true })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => `${folder}/${file}`);
}

/** Each source with all its mutants built in and switched off, and the list of the mutants. */
export async function instrument(root, files) {
  const texts = files.map((name) => ({
    name,
    mutate: true,
    content: readFileSync(join(root, name), "utf8"),
  }));
  const made = await new Instrumenter(silent).instrument(texts, {
    plugins: null,
    ignorers: [],
    excludedMutations,
    noHeader: true,
  });
  const lines = new Map(texts.map(({ name, content }) => [name, content.split("\n")]));
  const live = made.mutants.filter(({ statusReason }) => !statusReason);
  const mutants = live.map(({ id, fileName, mutatorName, replacement, location }) => ({
    id,
    file: fileName,
    mutator: mutatorName,
    line: location.start.line + 1,
    text: lines.get(fileName)[location.start.line].trim(),
    original: between(lines.get(fileName), location),
    replacement,
  }));
  const sources = new Map(made.files.map(({ name, content }) => [join(root, name), content]));
  return { sources, mutants, switches: made.mutants.length };
}

function between(lines, { start, end }) {
  if (start.line === end.line) return lines[start.line].slice(start.column, end.column);
  return [
    lines[start.line].slice(start.column),
    ...lines.slice(start.line + 1, end.line),
    lines[end.line].slice(0, end.column),
  ]
    .map((line) => line.trim())
    .join(" ");
}
