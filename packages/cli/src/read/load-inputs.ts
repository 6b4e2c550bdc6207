import { createHash } from "node:crypto";
import { type Complaint, Refusal } from "@hoopstay/core";
import {
  bearingComplaint,
  type House,
  type HouseInput,
  type HouseToday,
  houseComplaints,
  houseSchema,
  type InputRow,
  inputRows,
  nowComplaint,
  type PathComplaint,
  readHouseModel,
  readSiteModel,
  type Site,
  schemaComplaints,
  siteSchema,
  tieCountComplaints,
} from "@hoopstay/house";
import { type ParsedDocument, parseText } from "./parse-document.ts";
import { readText } from "./read-text.ts";

export interface Inputs {
  readonly house: House;
  readonly site: Site;
  readonly rows: readonly InputRow[];
  readonly digest: string;
  readonly date: string | null;
  readonly today: HouseToday;
}

/** What a command reads besides of a house file that is sound by itself; complaints are collected. */
export type ReadMore = (
  today: HouseToday,
  site: Site | undefined,
  complaints: PathComplaint[],
) => void;

/** Turns the complaints of one file into complaints with file, line and key. */
const placed = (
  complaints: readonly PathComplaint[],
  file: string,
  document: ParsedDocument,
): Complaint[] =>
  complaints.map(({ path, ...complaint }) => ({
    ...complaint,
    file,
    line: document.lineOf(path),
    key: path.map(String).join(".") || "(whole file)",
  }));

interface ReadFile<Input, Model> {
  readonly input?: Input;
  readonly model?: Model;
  readonly rows: readonly InputRow[];
  readonly text: string;
  readonly value: unknown;
  readonly document?: ParsedDocument;
}

function readOne<Input, Model>(
  file: string,
  kind: "house" | "site",
  schema: { safeParse(value: unknown): SafeParse<Input> },
  model: (input: Input, complaints: PathComplaint[]) => Model | undefined,
  complaints: Complaint[],
): ReadFile<Input, Model> {
  try {
    const text = readText(file);
    const document = parseText(text, file);
    const { value } = document;
    const parsed = schema.safeParse(value);
    if (!parsed.success) {
      const found = schemaComplaints(parsed.error.issues, value);
      for (const one of placed(found, file, document)) complaints.push(one);
      return { rows: [], text, value };
    }
    const found: PathComplaint[] = [];
    const made = model(parsed.data, found);
    complaints.push(...placed(found, file, document));
    const rows = inputRows(kind, parsed.data);
    const input = parsed.data;
    return { input, ...(made === undefined ? {} : { model: made }), rows, text, value, document };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    for (const one of error.complaints) complaints.push(one);
    return { rows: [], text: "", value: undefined };
  }
}

type SafeParse<Input> =
  | { success: true; data: Input }
  | { success: false; error: { issues: Parameters<typeof schemaComplaints>[0] } };

/** What was typed on the command line has no file and no line. */
const placedOrTyped = (
  complaints: readonly PathComplaint[],
  file: string,
  document: ParsedDocument,
): Complaint[] =>
  complaints.flatMap((one) => {
    const { path, ...complaint } = one;
    const typed = String(path[0]).startsWith("--");
    return typed
      ? [{ ...complaint, key: path.map(String).join(" ") }]
      : placed([one], file, document);
  });

/**
 * Both files, read, checked and turned into models; every complaint about either at once.
 *
 * @param readMore reads what else a command needs of the house file
 * @param before complaints about the command line, told with those about the files
 */
export function loadInputs(
  houseFile: string,
  siteFile: string,
  readMore?: ReadMore,
  before: readonly Complaint[] = [],
): Inputs {
  const complaints: Complaint[] = [...before];
  const houseModel = (input: HouseInput, found: PathComplaint[]): House | undefined => {
    found.push(...houseComplaints(input), ...tieCountComplaints(input));
    return readHouseModel(input, found);
  };
  const house = readOne(houseFile, "house", houseSchema, houseModel, complaints);
  const site = readOne(siteFile, "site", siteSchema, readSiteModel, complaints);
  if (house.model && site.model && site.document) {
    const unknown = nowComplaint(house.model, site.model);
    if (unknown)
      complaints.push(...placed([{ ...unknown, path: ["now"] }], siteFile, site.document));
    const sinking = bearingComplaint(house.model, site.model);
    if (sinking) {
      const path = ["ground", "bearing"];
      complaints.push(...placed([{ ...sinking, path }], siteFile, site.document));
    }
  }
  const today = house.model &&
    house.input && { document: house.value, input: house.input, house: house.model };
  if (readMore && today && house.document) {
    const found: PathComplaint[] = [];
    readMore(today, site.model, found);
    complaints.push(...placedOrTyped(found, houseFile, house.document));
  }
  if (complaints.length > 0 || !today || !site.model) throw new Refusal(complaints);
  const digest = createHash("sha256")
    .update(house.text)
    .update("\0")
    .update(site.text)
    .digest("hex");
  const { date } = site.value as { date?: unknown };
  return {
    house: today.house,
    site: site.model,
    today,
    rows: [...house.rows, ...site.rows],
    digest,
    date: typeof date === "string" ? date : null,
  };
}
