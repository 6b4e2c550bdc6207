import { describe, expect, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import { readPublished } from "../published/read-published.ts";
import { connectionColumn, isConnection, worthOf } from "./bolt-weld-face-published.ts";

const folders = [
  "aisc-360-22",
  "aisc-design-examples",
  "aisi-s100",
  "asme-b1-1",
  "en-1993-1-8",
  "quimby",
  "shigley-mischke-5",
] as const;

const files = folders.flatMap((folder) => readPublished(folder)).filter(isConnection);

for (const file of files) {
  describe(file.file, () => {
    for (const one of file.cases) {
      for (const value of one.values) {
        test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}`, () => {
          const computed = connectionColumn(file, one, value.quantity);
          expectPublished(computed / worthOf(value.unit), value);
        });
      }
    }
  });
}

test("at least 60 published cases on connections", () => {
  expect(files.flatMap((file) => file.cases).length).toBeGreaterThanOrEqual(60);
});
