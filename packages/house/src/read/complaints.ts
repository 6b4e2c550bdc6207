import { type Complaint, type Dimension, type RefusalCode, readQuantity } from "@hoopstay/core";
import type * as z from "zod/mini";
import { keysMark } from "../schema/field.ts";
import { type FieldComplaint, quantityMark } from "../schema/quantity.ts";
import { nearest } from "./nearest.ts";

export type Path = readonly PropertyKey[];

/** A complaint with the path it is about; the door turns the path into file, line and key. */
export interface PathComplaint extends Omit<Complaint, "file" | "line" | "key"> {
  readonly path: Path;
}

/** Every complaint of the schema, in the program's own words and codes. */
export function schemaComplaints(
  issues: readonly z.core.$ZodIssue[],
  document: unknown,
): PathComplaint[] {
  return issues.flatMap((issue) => complaintsOf(issue, document));
}

const valueAt = (document: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key],
    document,
  );

/** A value in a few words; a group is not written out: it may be large, or hold itself. */
const shown = (value: unknown): string => {
  if (value === null) return "nothing";
  if (typeof value === "object") return Array.isArray(value) ? "a list" : "a block of keys";
  const text = String(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
};

function complaintsOf(issue: z.core.$ZodIssue, document: unknown): PathComplaint[] {
  const { path, message } = issue;
  const given = valueAt(document, path);
  if (issue.code === "unrecognized_keys") return unknownKeys(path, issue.keys, message);
  if (issue.code === "custom") {
    const complaint = issue.params?.complaint as FieldComplaint;
    return [{ path, ...complaint, code: complaint.code as RefusalCode }];
  }
  if (issue.code === "invalid_union") {
    const choice = choiceMeant(issue, given);
    const within = choice?.map((one) => ({ ...one, path: [...path, ...one.path] }));
    if (within) return schemaComplaints(within, document);
  }
  if (given === undefined) {
    const key = String(path.at(-1));
    return [
      {
        path,
        code: "key-missing",
        expected: `the key "${key}"`,
        mend: `Add "${key}" here; it has no sensible default.`,
      },
    ];
  }
  if (message.startsWith(quantityMark)) {
    const read = readQuantity(given, message.slice(quantityMark.length) as Dimension);
    if (!read.ok) {
      const { code, given: text, expected, mend } = read;
      return [{ path, code, given: text, expected, mend }];
    }
  }
  return [otherComplaint(issue, given)];
}

/** Of several kinds of value a block of keys: what is wrong inside it. */
const choiceMeant = (
  { errors }: z.core.$ZodIssueInvalidUnion,
  given: unknown,
): z.core.$ZodIssue[] | undefined =>
  typeof given === "object" && given !== null
    ? errors.find(
        (issues) => !issues.some(({ code, path }) => code === "invalid_type" && path.length === 0),
      )
    : undefined;

function unknownKeys(path: Path, unknown: readonly string[], message: string): PathComplaint[] {
  const known = message.startsWith(keysMark) ? message.slice(keysMark.length).split(",") : [];
  return unknown.map((key) => {
    const near = nearest(key, known);
    return {
      path: [...path, key],
      code: "key-unknown",
      given: shown(key),
      expected: `one of: ${known.join(", ")}`,
      mend: near ? `Did you mean "${near}"?` : "Take the key out, or correct its spelling.",
    };
  });
}

function otherComplaint(issue: z.core.$ZodIssue, given: unknown): PathComplaint {
  const base = { path: issue.path, given: shown(given) };
  if (issue.code === "invalid_value") {
    const values = issue.values.map(String);
    const near = typeof given === "string" ? nearest(given, values) : undefined;
    const quoted = typeof given === "number" && values.includes(String(given));
    const mend = quoted
      ? `Put it in quotes: "${given}".`
      : near
        ? `Did you mean "${near}"?`
        : "Take one of the words listed.";
    return { ...base, code: "wrong-kind", expected: `one of: ${values.join(", ")}`, mend };
  }
  if (issue.code === "too_small" || issue.code === "too_big") {
    const tooSmall = issue.code === "too_small";
    const least = issue.inclusive === false ? "above" : "at least";
    const bound = tooSmall ? `${least} ${issue.minimum}` : `at most ${issue.maximum}`;
    const code =
      tooSmall && typeof given === "number" && given <= 0 ? "not-positive" : "out-of-range";
    return { ...base, code, expected: bound, mend: "Correct the value." };
  }
  if (issue.code === "invalid_union") {
    const expected = issue.message.startsWith("Invalid") ? "yes or no" : issue.message;
    return { ...base, code: "wrong-kind", expected, mend: `Write ${expected} here.` };
  }
  if (issue.code === "invalid_format") {
    const mend = "Write a short name, such as sides-up.";
    return { ...base, code: "wrong-kind", expected: "small letters a-z, figures and -", mend };
  }
  const kinds: Record<string, string> = {
    boolean: "yes or no (true or false)",
    int: "a whole number",
    number: "a whole number",
    object: "a block of keys",
    record: "a block of keys",
    array: "a list, each entry after a dash",
    string: "text",
  };
  // A field that says itself what it expects has a message of its own.
  const plain = issue.code === "invalid_type" && issue.message.startsWith("Invalid");
  const expected = plain ? (kinds[issue.expected] ?? issue.expected) : issue.message;
  return { ...base, code: "wrong-kind", expected, mend: `Write ${expected} here.` };
}
