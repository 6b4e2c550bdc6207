import * as z from "zod/mini";
import { resultSchema } from "../result/result-schema.ts";
import { houseSchema } from "./house-schema.ts";
import { siteSchema } from "./site-schema.ts";

const titles = {
  house: "hoopstay house file",
  site: "hoopstay site file",
  result: "hoopstay result (hoopstay check --json)",
} as const;

export type SchemaName = keyof typeof titles;

/** The JSON Schema of a file or of the result, generated from the schema that reads or makes it. */
export function jsonSchema(name: SchemaName): object {
  const schema = { house: houseSchema, site: siteSchema, result: resultSchema() }[name];
  return {
    title: titles[name],
    ...z.toJSONSchema(schema, { io: name === "result" ? "output" : "input" }),
  };
}
