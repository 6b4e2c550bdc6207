import { type Grade, gradeWords, type SourceId, sources } from "@hoopstay/core";
import { isMap, isScalar, parseDocument, type YAMLMap } from "yaml";
import type { PublishedCase, PublishedFile, PublishedValue } from "./published-case.ts";
import { allowance, type TolerancePart, toleranceWords } from "./tolerance.ts";

/** Texts by their path under `fixtures`. */
export type Texts = Readonly<Record<string, string>>;

const folder = "published/";

const fileKeys =
  "source edition place grade quantity units given tolerance tolerances disagreements cases";
const caseKeys = "case place grade given expect disagrees refused";

interface Raw {
  readonly source: SourceId;
  readonly edition: string;
  readonly place: string;
  readonly grade: Grade;
  readonly quantity: string;
  readonly units?: Record<string, string>;
  readonly given?: Record<string, unknown>;
  readonly tolerance: TolerancePart | TolerancePart[];
  readonly tolerances?: Record<string, TolerancePart | TolerancePart[]>;
  readonly disagreements?: number;
  readonly cases: RawCase[];
}

interface RawCase {
  readonly case: string;
  readonly place?: string;
  readonly grade?: Grade;
  readonly given?: Record<string, unknown>;
  readonly expect?: Record<string, number>;
  readonly disagrees?: Record<string, TolerancePart>;
  readonly refused?: string;
}

/** Reads the files of published values among the texts, in the order of their paths. */
export const readPublished = (texts: Texts): readonly PublishedFile[] =>
  Object.keys(texts)
    .filter((path) => path.startsWith(folder))
    .sort()
    .map((path) => readFile(path.slice(folder.length), texts[path] as string));

/** Reads one file, checks its shape, and throws with the file's name where it is wrong. */
function readFile(file: string, text: string): PublishedFile {
  const document = parseDocument(text);
  const fail = (what: string): never => {
    throw new Error(`fixtures/published/${file}: ${what}`);
  };
  const [broken] = document.errors;
  if (broken) fail(broken.message);
  const raw = document.toJS() as Raw;
  onlyKeys(raw, fileKeys, fail);
  if (!(raw.source in sources)) fail(`source ${raw.source} is not registered`);
  if (!file.startsWith(`${raw.source}/`)) fail(`not in the folder of its source ${raw.source}`);
  if (sources[raw.source].edition !== raw.edition) fail("edition is not the registered one");
  const nodes = document.get("cases") as { items: YAMLMap[] };
  const cases = raw.cases.map((entry, index) => {
    onlyKeys(entry, caseKeys, fail);
    return readCase(raw, entry, nodes.items[index] ?? fail("case without a node"), fail);
  });
  const counted = cases.flatMap((one) => one.values).filter((value) => value.disagreement).length;
  if (counted !== (raw.disagreements ?? 0)) fail(`${counted} disagreements, not as declared`);
  const { source, edition, place, grade, quantity, units = {} } = raw;
  return { file, source, edition, place, grade, quantity, units, cases };
}

function readCase(
  raw: Raw,
  entry: RawCase,
  node: YAMLMap,
  fail: (what: string) => never,
): PublishedCase {
  const grade = entry.grade ?? raw.grade;
  if (!(grade in gradeWords)) fail(`${entry.case}: grade ${grade}`);
  const expected = node.get("expect");
  const values = Object.entries(entry.expect ?? {}).map(([quantity, value]): PublishedValue => {
    const scalar = isMap(expected) ? expected.get(quantity, true) : undefined;
    const printed = isScalar(scalar) ? scalar.source : undefined;
    if (typeof value !== "number" || !printed) return fail(`${entry.case}: ${quantity}`);
    const parts = [raw.tolerances?.[quantity] ?? raw.tolerance].flat();
    if (parts.some((part) => !part.reason)) fail(`${quantity}: a tolerance without its reason`);
    const unit = raw.units?.[quantity] ?? "1";
    const allowed = allowance(printed, parts);
    const plain = { quantity, printed, unit, value, allowed, tolerance: toleranceWords(parts) };
    const disagrees = entry.disagrees?.[quantity];
    if (!disagrees) return plain;
    const { reason } = disagrees;
    return { ...plain, disagreement: { reason, allowed: allowance(printed, [disagrees]) } };
  });
  if (values.length === 0 && !entry.refused) fail(`${entry.case}: nothing expected`);
  const place = entry.place ?? raw.place;
  const title = `${sources[raw.source].title}, ${raw.edition}, ${place} [${grade}]: ${entry.case}`;
  const given = { ...raw.given, ...entry.given };
  const plain = { name: entry.case, title, place, grade, given, values };
  return entry.refused === undefined ? plain : { ...plain, refused: entry.refused };
}

function onlyKeys(record: object, known: string, fail: (what: string) => never): void {
  const unknown = Object.keys(record).find((key) => !known.split(" ").includes(key));
  if (unknown) fail(`key ${unknown}`);
}
