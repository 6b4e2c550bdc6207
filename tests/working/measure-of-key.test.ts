import { readQuantity, showMeasured } from "@hoopstay/core";
import { houseSchema, inputRows, siteSchema } from "@hoopstay/house";
import { describe, expect, it } from "vitest";
import { quantityKinds } from "../../packages/house/src/schema/quantity.ts";

interface Schema {
  readonly parse: (given: unknown) => unknown;
  readonly _zod: {
    readonly def: {
      readonly shape?: Record<string, Schema>;
      readonly element?: Schema;
      readonly innerType?: Schema;
      readonly valueType?: Schema;
      readonly options?: readonly Schema[];
    };
  };
}

/** Every key of a schema that takes a quantity, with its schema. */
function quantities(schema: Schema, key = ""): [string, Schema][] {
  if (quantityKinds.has(schema)) return [[key, schema]];
  const { shape = {}, element, innerType, valueType, options = [] } = schema._zod.def;
  return [
    ...Object.entries(shape).flatMap(([name, part]) =>
      quantities(part, key ? `${key}.${name}` : name),
    ),
    ...[element, innerType, valueType, ...options].flatMap((part) =>
      part ? quantities(part, key) : [],
    ),
  ];
}

const ofOthers = /^(variants|prices|search)\b/;

describe.each([
  ["house", houseSchema as unknown as Schema, 60],
  ["site", siteSchema as unknown as Schema, 8],
] as const)(
  "every quantity of the %s file is shown in a unit of its own kind",
  (file, schema, least) => {
    const all = quantities(schema).filter(([key]) => !ofOthers.test(key));

    it("finds the keys", () => {
      expect(all.length).toBeGreaterThan(least);
      expect(new Set(all.map(([, one]) => quantityKinds.get(one)?.dimension)).size).toBeGreaterThan(
        3,
      );
    });

    it.each(all)("%s", (key, one) => {
      const { dimension, example } = quantityKinds.get(one) ?? { dimension: "length", example: "" };
      const [row] = inputRows(file, one.parse(example), key);
      const used = row?.used;
      if (!used || typeof used === "string") throw new Error(`${key} is no quantity`);
      for (const system of ["us", "si"] as const) {
        const again = readQuantity(showMeasured(used, system), dimension);
        if (!again.ok) throw new Error(`${key} is shown as ${showMeasured(used, system)}`);
        expect(again.value / used.value).toBeCloseTo(1, 2);
      }
    });
  },
);
