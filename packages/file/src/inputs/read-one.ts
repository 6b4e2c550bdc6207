import { type Complaint, Refusal } from "@hoopstay/core";
import { type InputRow, inputRows, type PathComplaint, schemaComplaints } from "@hoopstay/house";
import { type ParsedDocument, parseText } from "../parse/parse-document.ts";
import { placed } from "./placed.ts";

/** The text of a file by its name; a Refusal is thrown where it cannot be read. */
export type TextOf = (file: string) => string;

interface ReadFile<Input, Model> {
  readonly input?: Input;
  readonly model?: Model;
  readonly rows: readonly InputRow[];
  readonly text: string;
  readonly value: unknown;
  readonly document?: ParsedDocument;
}

type SafeParse<Input> =
  | { success: true; data: Input }
  | { success: false; error: { issues: Parameters<typeof schemaComplaints>[0] } };

/** One file through form, schema and model; what is wrong with it is collected. */
export function readOne<Input, Model>(
  file: string,
  textOf: TextOf,
  kind: "house" | "site",
  schema: { safeParse(value: unknown): SafeParse<Input> },
  model: (input: Input, complaints: PathComplaint[]) => Model | undefined,
  complaints: Complaint[],
): ReadFile<Input, Model> {
  try {
    const text = textOf(file);
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
