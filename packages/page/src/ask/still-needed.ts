import type { Question } from "@hoopstay/core";
import type { Path } from "@hoopstay/file/value";
import type { FileName } from "../engine/messages.ts";
import { questions, reading } from "../session/state.ts";

/** A question without an answer that nothing sensible can be assumed for. */
export interface Needed {
  readonly file: FileName;
  readonly path: Path;
}

type Values = Readonly<Record<string | number, unknown>> | null | undefined;

function needsOf(question: Question, file: FileName, path: Path, value: unknown): Needed[] {
  if (value === undefined && question.optional) return [];
  if (question.kind === "group") {
    return question.parts.flatMap((part) =>
      needsOf(part, file, [...path, part.key], (value as Values)?.[part.key]),
    );
  }
  if (question.kind === "list" && Array.isArray(value)) {
    return value.flatMap((entry, place) => needsOf(question.item, file, [...path, place], entry));
  }
  return value === undefined ? [{ file, path }] : [];
}

/** Everything that is still needed of a file, from the first moment, under some of its keys. */
export function stillNeeded(file: FileName, keys?: readonly string[]): Needed[] {
  const root = questions.value?.[file];
  if (!root) return [];
  const isAsked = ({ key }: { readonly key: string }): boolean => !keys || keys.includes(key);
  const asked = root.kind === "group" ? { ...root, parts: root.parts.filter(isAsked) } : root;
  return needsOf({ ...asked, optional: false }, file, [], reading.value?.values[file]);
}
