import { Refusal } from "@hoopstay/core";
import { describe, expect, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import { readPublished } from "../published/read-published.ts";
import { computeGround, isGround, worthOf } from "./published-ground.ts";

const folders = [
  "niroumand",
  "das-earth-anchors",
  "meyerhof-1973",
  "vesic-1971",
  "broms-1964",
  "tm-5-5420-278-10",
  "navedtra-14251",
  "fm-5-125",
  "staking-study",
  "24-cfr-3285",
  "statics",
  "navfac-dm-7.02",
  "manuwa-afolabi-2007",
  "ill-77-870",
  "la-51-912",
  "fema-p-85",
  "minn-1350",
] as const;

for (const file of folders.flatMap((folder) => readPublished(folder)).filter(isGround)) {
  describe(file.file, () => {
    for (const one of file.cases) {
      if (one.refused !== undefined) {
        test(`${one.title}, refused`, () => {
          let code: string | undefined;
          try {
            computeGround(file, one, "");
          } catch (refusal) {
            if (!(refusal instanceof Refusal)) throw refusal;
            code = refusal.complaints[0]?.code;
          }
          expect(code).toBe(one.refused);
        });
      }
      for (const value of one.values) {
        const known = value.disagreement ? " (disagrees)" : "";
        test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}${known}`, () => {
          const computed = computeGround(file, one, value.quantity);
          expectPublished(computed / worthOf(value.unit), value);
        });
      }
    }
  });
}
