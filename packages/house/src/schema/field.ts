import * as z from "zod/mini";
import { described } from "./described.ts";
import { quantity } from "./quantity.ts";

// A file is read once: code made for its schema would never pay.
z.config({ jitless: true });

export { optional } from "zod/mini";

/** Begins the message of an unknown key; the known ones follow. */
export const keysMark = "keys:";

/** An object with exactly these keys; the door suggests the nearest one for any other. */
export function keys<Shape extends z.core.$ZodLooseShape>(shape: Shape, about?: string) {
  const object = z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys" ? `${keysMark}${Object.keys(shape).join(",")}` : undefined,
  });
  return described(object, about);
}

/** Text of any length. */
export const text = (about?: string, examples?: readonly string[]) =>
  described(z.string(), about, examples);

/** Free text of the owner's, one line. */
export const words = (about: string) =>
  described(z.string().check(z.minLength(1), z.maxLength(200)), about);

export const shortName = () =>
  described(z.string().check(z.regex(/^[a-z0-9-]+$/)), "short name: a-z, 0-9 and -");

/** One of these words. */
export const choice = <const Words extends readonly string[]>(of: Words, about?: string) =>
  described(z.enum(of), about);

/** True or false, or the words yes and no, which YAML reads as text. */
export const yes = (about: string) =>
  described(
    z.pipe(
      z.union([z.boolean(), z.enum(["yes", "no"])]),
      z.transform((given) => given === true || given === "yes"),
    ),
    about,
  );

export const count = (about: string, least = 1, most = 1000) =>
  described(z.int().check(z.minimum(least), z.maximum(most)), about);

interface Bounds {
  readonly about?: string;
  readonly least?: number;
  readonly most?: number;
}

export function list<Entry extends z.ZodMiniType>(
  entry: Entry,
  { about, least, most }: Bounds = {},
) {
  const checks = [
    ...(least === undefined ? [] : [z.minLength(least)]),
    ...(most === undefined ? [] : [z.maxLength(most)]),
  ];
  return described(z.array(entry).check(...checks), about);
}

/** A place in the house: across (right is plus), along (front is plus), up from the ground. */
export const place = (about: string) =>
  keys(
    {
      across: z.optional(quantity("length", "across, from the middle; right is plus", "any")),
      along: z.optional(quantity("length", "along, from the middle; front is plus", "any")),
      up: z.optional(quantity("length", "above ground", "not-negative")),
    },
    about,
  );
