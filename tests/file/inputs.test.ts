import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { Refusal } from "@hoopstay/core";
import { readInputs, withValue } from "@hoopstay/file";
import { expect, test } from "vitest";

const fixtures = resolve(import.meta.dirname, "../../fixtures");
const read = (name: string): string => readFileSync(`${fixtures}/${name}.yaml`, "utf8");
const texts: Record<string, string> = {
  house: read("houses/harrow-brook"),
  site: read("sites/hill-top"),
};

const unreadable = new Refusal([
  { code: "file-unreadable", file: "site", expected: "a file that can be read", mend: "Look." },
]);
const inputsOf = (changed: Record<string, string | Refusal> = {}) =>
  readInputs(
    "house",
    "site",
    (name) => {
      const text = changed[name] ?? texts[name] ?? "";
      if (typeof text !== "string") throw text;
      return text;
    },
    (text) => text,
  );

const toldOf = (changed: Record<string, string | Refusal>): string[] => {
  try {
    inputsOf(changed);
    return [];
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return error.complaints.map(({ file, line, key, code }) => `${file}:${line} ${key} ${code}`);
  }
};

test("texts become both models, with the date and rows of the inputs", () => {
  const { house, site, rows, date, today } = inputsOf();
  expect(house.name).toBe("Harrow Brook lambing and greens house");
  expect(site.name).toBe("Hill top");
  expect(date).toBe("2026-11-19");
  expect(rows.length).toBeGreaterThan(50);
  expect(today.house).toBe(house);
});

test("the digest is made of both texts with a zero between them", () => {
  expect(inputsOf().digest).toBe(`${texts.house}\0${texts.site}`);
  const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");
  const { digest } = readInputs("house", "site", (name) => texts[name] ?? "", sha256);
  const parts = createHash("sha256")
    .update(texts.house ?? "")
    .update("\0")
    .update(texts.site ?? "");
  expect(digest).toBe(parts.digest("hex"));
});

test("a file that cannot be read is told along with what is wrong with the other", () => {
  const house = withValue(texts.house ?? "", ["hoops", "span"], "18 stone");
  const line = house.split("\n").findIndex((one) => one.includes("18 stone")) + 1;
  expect(toldOf({ house, site: unreadable })).toEqual([
    `house:${line} hoops.span unit-unknown`,
    "site:undefined undefined file-unreadable",
  ]);
});

test("complaints about both files come at once, each with its line", () => {
  const told = toldOf({ house: "house: x\nhooops: 1\n", site: "site: x\nspeed: 3\n" });
  expect(told).toContain("house:2 hooops key-unknown");
  expect(told).toContain("site:2 speed key-unknown");
});

test("a number is quoted as it was typed, not as it is read", () => {
  const givenFor = (was: RegExp, key: string, typed: string): (string | undefined)[] => {
    const house = (texts.house ?? "").replace(was, `$1${key}: ${typed}`);
    expect(house).toContain(` ${key}: ${typed}`);
    try {
      inputsOf({ house });
      return [];
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return error.complaints.filter((one) => one.key === `hoops.${key}`).map(({ given }) => given);
    }
  };
  const span = (typed: string) => givenFor(/^( +)span: .*$/m, "span", typed);
  for (const typed of ["-1e999", "1e999", ".inf", "0x12", "1e3", "+18", "18.0", "18"]) {
    expect(span(typed), typed).toEqual([typed]);
  }
  const long = "9".repeat(400);
  expect(span(long)).toEqual([`${"9".repeat(60)}...`]);
  expect(span('"18 stone"')).toEqual(["18 stone"]);
  expect(span("[18]")).toEqual(["a list"]);
  for (const typed of ["-1e999", "1.50", "0x1"]) {
    expect(givenFor(/^( +)spacing: .*$/m, "count", typed), typed).toEqual([typed]);
  }
});
