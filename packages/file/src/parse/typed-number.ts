import { type Document, isScalar } from "yaml";

/** A number of a file: what it reads as, and how it was typed. 1e999 reads as Infinity. */
export interface TypedNumber {
  readonly value: number;
  readonly typed: string;
}

/** The number to which a path leads, undefined where something else or nothing stands there. */
export function typedNumber(
  document: Document.Parsed,
  path: readonly PropertyKey[],
): TypedNumber | undefined {
  const node = document.getIn(path, true);
  if (!isScalar(node) || typeof node.value !== "number" || node.source === undefined)
    return undefined;
  return { value: node.value, typed: node.source };
}
