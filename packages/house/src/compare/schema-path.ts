import * as z from "zod/mini";
import { nearest } from "../read/nearest.ts";
import { houseSchema } from "../schema/house-schema.ts";

/** Keys that say nothing of the house itself. */
const notOfTheHouse = ["$schema", "house", "variants", "prices", "search"];

const bare = (schema: unknown): unknown =>
  schema instanceof z.ZodMiniOptional ? bare(schema.def.innerType) : schema;

const keysOf = (schema: unknown, depth: number): string[] =>
  schema instanceof z.ZodMiniObject
    ? Object.keys(schema.shape).filter((key) => depth > 0 || !notOfTheHouse.includes(key))
    : [];

const childOf = (schema: unknown, key: string): unknown => {
  if (schema instanceof z.ZodMiniArray)
    return /^\d{1,3}$/.test(key) ? bare(schema.def.element) : undefined;
  return schema instanceof z.ZodMiniObject && Object.hasOwn(schema.shape, key)
    ? bare(schema.shape[key])
    : undefined;
};

/** A path of the house file, or where it leaves what such a file can hold. */
export type SchemaPath =
  | { readonly ok: true; readonly path: readonly string[]; readonly schema: unknown }
  | { readonly ok: false; readonly expected: string; readonly near: string | undefined };

/** Every path down to its last key, entries of lists as 0. */
function allPaths(schema: unknown, before: readonly string[]): string[] {
  if (schema instanceof z.ZodMiniArray) return allPaths(bare(schema.def.element), [...before, "0"]);
  return keysOf(schema, before.length).flatMap((key) => {
    const here = [...before, key];
    return [here.join("."), ...allPaths(childOf(schema, key), here)];
  });
}

/** The known path spelled most like a given one, or one that ends in it. */
function nearestPath(given: string): string | undefined {
  const known = allPaths(houseSchema, []);
  return known.find((path) => path.endsWith(`.${given}`)) ?? nearest(given, known);
}

/** A path with one key mended, and the rest of it where that leads on. */
function mended(start: readonly string[], rest: readonly string[]): string {
  const whole = [...start, ...rest].join(".");
  return schemaPath(whole).ok ? whole : start.join(".");
}

/** Follows a path with dots through the schema of the house file. */
export function schemaPath(given: string): SchemaPath {
  const path = given.split(".");
  let schema: unknown = houseSchema;
  for (const [depth, key] of path.entries()) {
    const next = depth === 0 && notOfTheHouse.includes(key) ? undefined : childOf(schema, key);
    if (next !== undefined) {
      schema = next;
      continue;
    }
    const known = keysOf(schema, depth);
    const start = path.slice(0, depth);
    const near = nearest(key, known);
    const list = schema instanceof z.ZodMiniArray ? "the number of an entry, from 0" : undefined;
    const expected = list ?? (known.length > 0 ? `one of: ${known.join(", ")}` : "no key below it");
    return {
      ok: false,
      expected: depth > 0 ? `after "${start.join(".")}", ${expected}` : expected,
      near: near ? mended([...start, near], path.slice(depth + 1)) : nearestPath(given),
    };
  }
  return { ok: true, path, schema };
}
