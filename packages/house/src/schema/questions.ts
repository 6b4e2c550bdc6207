import type { Question } from "@hoopstay/core";
import * as z from "zod/mini";
import { quantityKinds } from "./quantity.ts";

type Schema = z.core.$ZodType;
type Definition = z.core.$ZodTypes["_zod"]["def"];

const definitionOf = (schema: Schema): Definition =>
  (schema as z.core.$ZodTypes)._zod.def as Definition;

const aboutOf = (schema: Schema): string => z.globalRegistry.get(schema)?.description ?? "";

/**
 * Every key of a schema as a question, in the schema's order: what a screen has to ask so that a
 * whole file can be made on it. What is of no kind known here is left as it stands in the file.
 */
export function questionOf(schema: Schema, key = ""): Question {
  const definition = definitionOf(schema);
  if (definition.type === "optional") {
    const inner = questionOf(definition.innerType, key);
    return { ...inner, optional: true, about: aboutOf(schema) || inner.about };
  }
  return {
    key,
    optional: false,
    about: aboutOf(schema),
    ...kindOf(schema, definition),
  } as Question;
}

function kindOf(schema: Schema, definition: Definition): object {
  const quantity = quantityKinds.get(schema);
  if (quantity) {
    const { dimension, sign, about, example } = quantity;
    return { kind: "quantity", about, dimension, sign, example };
  }
  switch (definition.type) {
    case "object":
      return {
        kind: "group",
        parts: Object.entries(definition.shape)
          .filter(([key]) => key !== "$schema")
          .map(([key, part]) => questionOf(part, key)),
      };
    case "array": {
      const item = questionOf(definition.element);
      if (item.kind === "choice") return { kind: "several", options: item.options };
      return { kind: "list", item };
    }
    case "enum":
      return { kind: "choice", options: Object.values(definition.entries).map(String) };
    case "number":
      return { kind: "count", ...boundsOf(definition) };
    case "string":
      return { kind: "words", examples: z.globalRegistry.get(schema)?.examples ?? [] };
    case "pipe":
      // Yes or no, in two spellings, is the only pipe that is no quantity.
      return definitionOf(definition.in).type === "union" ? { kind: "yes" } : { kind: "free" };
    default:
      return { kind: "free" };
  }
}

/** Bounds of a whole number, both of them allowed. */
function boundsOf({ checks = [] }: Pick<z.core.$ZodNumberDef, "checks">): {
  readonly least: number;
  readonly most: number;
} {
  const bound = (check: string): number | undefined =>
    checks
      .map(({ _zod }) => _zod.def as { readonly check: string; readonly value?: number })
      .find((one) => one.check === check)?.value;
  return { least: bound("greater_than") ?? 0, most: bound("less_than") ?? 1000 };
}
