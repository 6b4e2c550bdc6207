import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { readFixture, soundHouse, soundSite } from "./program.ts";

type File = "house" | "site";

interface Change {
  readonly file?: File;
  readonly replace?: string;
  readonly with?: string;
}

interface Expected {
  readonly file?: File;
  readonly code: string;
  readonly key?: string;
  /** Text on the line the complaint names; empty where no line can be named. */
  readonly at?: string;
  readonly says?: string;
}

/** A row of a table in fixtures/refused: what is done to the sound files, what is said to it. */
export interface RefusedRow extends Change, Expected {
  readonly name: string;
  readonly file?: File;
  readonly changes?: readonly Change[];
  readonly complaints?: readonly Expected[];
  /** More complaints may follow from this one. */
  readonly also?: string;
  readonly exit?: 2 | 3;
  readonly content?: string;
  readonly repeat?: string;
  readonly size?: number;
  readonly hex?: string;
  readonly missing?: string;
  readonly folder?: string;
}

export interface CommandRow extends Expected {
  readonly name: string;
  readonly args: readonly string[];
  readonly exit: 0 | 2;
}

export const readTable = <Row>(name: string): Row[] => parse(readFixture(`refused/${name}.yaml`));

/** The text with one part replaced; throws where the sound file has no such part. */
function changed(text: string, change: Change): string {
  const { replace = "", with: by = "" } = change;
  if (!text.includes(replace)) throw new Error(`no "${replace}" in the sound file`);
  return text.replace(replace, () => by);
}

export interface Laid {
  readonly house: string;
  readonly site: string;
}

/** Writes both files of a row into a folder as house.yaml and site.yaml; their texts. */
export function layFiles(row: RefusedRow, folder: string): Laid {
  const texts = { house: soundHouse, site: soundSite };
  for (const change of row.changes ?? (row.replace === undefined ? [] : [row])) {
    const file = change.file ?? "house";
    texts[file] = changed(texts[file], change);
  }
  if (row.content !== undefined) texts.house = row.content;
  if (row.repeat) texts.house = row.repeat.repeat((row.size ?? 0) / row.repeat.length);
  const house = join(folder, "house.yaml");
  if (row.folder) mkdirSync(house);
  else if (row.hex) writeFileSync(house, Buffer.from(row.hex, "hex"));
  else if (!row.missing) writeFileSync(house, texts.house);
  writeFileSync(join(folder, "site.yaml"), texts.site);
  return texts;
}

/** What a row expects, with the head of each complaint as it is printed: file:line key [code]. */
export function headsOf(row: RefusedRow, texts: Laid): { head: string; says: string }[] {
  return (row.complaints ?? [row]).map((expected) => {
    const { code, key, says = "", file = row.file ?? "house" } = expected;
    const at = expected.at ?? (row.with ?? row.content ?? row.repeat ?? "").trimEnd();
    const place = texts[file].indexOf(at === "" ? "\n" : at);
    const line = place < 0 ? 0 : texts[file].slice(0, place).split("\n").length;
    if (at !== "" && line === 0) throw new Error(`no "${at}" in the changed file`);
    const where = expected.at === "" ? `${file}.yaml` : `${file}.yaml:${line || 1}`;
    return { head: [where, ...(key ? [key] : []), `[${code}]`].join("  "), says };
  });
}
