import * as z from "zod/mini";

/** The schema, with what an editor shows about it. */
export function described<Schema extends z.ZodMiniType>(
  schema: Schema,
  description?: string,
  examples?: readonly unknown[],
): Schema {
  if (description === undefined) return schema;
  z.globalRegistry.add(schema, { description, ...(examples && { examples }) });
  return schema;
}
