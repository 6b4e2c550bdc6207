import type { House } from "../model/house-model.ts";
import { readHouseModel } from "../model/read-house.ts";
import { type Path, type PathComplaint, schemaComplaints } from "../read/complaints.ts";
import { houseComplaints } from "../read/cross-checks.ts";
import { type HouseInput, houseSchema } from "../schema/house-schema.ts";
import type { AskedVariant } from "./asked-variant.ts";
import { valueAt, withValueAt } from "./changed-document.ts";
import { measuredLikewise } from "./measured-likewise.ts";
import { goneWith } from "./stands-for.ts";
import { typedText } from "./typed-text.ts";
import { pathComplaints } from "./variant-paths.ts";

/** One key of a variant: what stands there today, and what would. As typed. */
export interface VariantChange {
  readonly key: string;
  readonly from: string;
  readonly to: string;
}

/** A variant as a house of its own. */
export interface VariantHouse {
  readonly name: string;
  readonly changes: readonly VariantChange[];
  readonly input: HouseInput;
  readonly house: House;
}

/** Today's house: its file as parsed, as read and in SI. */
export interface HouseToday {
  readonly document: unknown;
  readonly input: HouseInput;
  readonly house: House;
}

interface Step {
  readonly path: readonly string[];
  readonly value: unknown;
}

/** What is set, blocks before what is inside them; then what is taken out, last entries first. */
function stepsOf(change: AskedVariant["change"]): Step[] {
  const asked = Object.entries(change).map(([key, value]) => ({ path: key.split("."), value }));
  const set = asked
    .filter(({ value }) => value !== null)
    .sort((one, other) => one.path.length - other.path.length);
  const out = asked
    .filter(({ value }) => value === null)
    .sort((one, other) =>
      other.path.join(".").localeCompare(one.path.join("."), "en", { numeric: true }),
    );
  return [...set, ...out];
}

/**
 * The house with the changes of a variant, read like any house file.
 *
 * @param complaints collects what is wrong with it; the variant is undefined when any was found
 */
export function readVariant(
  today: HouseToday,
  asked: AskedVariant,
  complaints: PathComplaint[],
): VariantHouse | undefined {
  const wrong = pathComplaints(asked, today.document);
  if (wrong.length > 0) {
    complaints.push(...wrong);
    return undefined;
  }
  const steps = stepsOf(asked.change);
  const own = new Set(Object.keys(asked.change));
  const gone = steps
    .filter(({ value }) => value !== null)
    .flatMap(({ path }) => goneWith(path))
    .filter((path) => !own.has(path.join(".")) && valueAt(today.document, path) !== undefined)
    .map((path): Step => ({ path, value: null }));
  const all = [...gone, ...steps];
  const document = all.reduce(
    (changed, { path, value }) => withValueAt(changed, path, value),
    today.document,
  );
  const found: PathComplaint[] = [];
  const made = readDocument(document, found);
  complaints.push(...found.map((one) => ({ ...one, path: placeOf(one.path, asked) })));
  if (!made || found.length > 0) return undefined;
  if (sameHouse(made.input, today.input)) {
    const mend = "Change a key to another value, or take the variant out.";
    const expected = "a house that differs from today's";
    const given = all.map(({ path }) => path.join(".")).join(", ") || "no change";
    complaints.push({ path: asked.at, code: "variant-unchanged", given, expected, mend });
    return undefined;
  }
  const changes = all
    .map(({ path, value }) => ({
      key: path.join("."),
      from: typedText(valueAt(today.document, path)),
      to: typedText(value),
    }))
    .filter(({ from, to }) => from !== to);
  const weighedAnew = steps.some(({ path }) => path[0] === "measured_weight");
  const house = weighedAnew ? made.house : measuredLikewise(today.house, made.house);
  return { name: asked.name, changes, input: made.input, house };
}

function readDocument(
  document: unknown,
  complaints: PathComplaint[],
): { input: HouseInput; house: House } | undefined {
  const parsed = houseSchema.safeParse(document);
  if (!parsed.success) {
    complaints.push(...schemaComplaints(parsed.error.issues, document));
    return undefined;
  }
  complaints.push(...houseComplaints(parsed.data));
  const house = readHouseModel(parsed.data, complaints);
  return house && { input: parsed.data, house };
}

/** Where a complaint about the changed file belongs: to the change that it is about, if to any. */
function placeOf(path: Path, { change, at }: AskedVariant): Path {
  const text = path.map(String).join(".");
  const key = Object.keys(change).find((one) => text === one || text.startsWith(`${one}.`));
  if (key === undefined) return [...at, ...path];
  return [...at, key, ...path.slice(key.split(".").length)];
}

/** Whether two files say the same of the house, however it is typed. */
const sameHouse = (one: HouseInput, other: HouseInput): boolean => plain(one) === plain(other);

const plain = ({ house: _, variants: _v, prices: _p, search: _s, ...input }: HouseInput): string =>
  JSON.stringify(input, (key, value) => (key === "text" ? undefined : value));
