import { readFileSync } from "node:fs";
import {
  type AskedVariant,
  type HouseToday,
  houseSchema,
  type PathComplaint,
  readHouseModel,
  readSiteModel,
  readVariants,
  type Site,
  siteSchema,
  type VariantHouse,
} from "@hoopstay/house";
import { parse } from "yaml";

type Block = Record<string, unknown>;

const fixture = (path: string): Block =>
  parse(readFileSync(new URL(`../../fixtures/${path}.yaml`, import.meta.url), "utf8"));

/** A house file as parsed, read. */
export function todayOf(document: Block): HouseToday {
  const input = houseSchema.parse(document);
  const house = readHouseModel(input, []);
  if (!house) throw new Error("the example is refused");
  return { document, input, house };
}

const { variants: _, ...plain } = fixture("houses/harrow-brook");
/** The example house without variants, and with what a test puts in place of some keys. */
export const exampleDocument: Block = plain;
export const exampleWith = (changes: Block): HouseToday => todayOf({ ...plain, ...changes });
export const today = exampleWith({});

const site = readSiteModel(siteSchema.parse(fixture("sites/sheltered-paddock")), []);
if (!site) throw new Error("the example site is refused");
export const paddock: Site = site;

export const asked = (change: Block, name = "asked"): AskedVariant => ({
  name,
  change,
  at: ["--with"],
});

/** Variants read beside a house, and every complaint about them. */
export function variantsOf(
  changes: readonly Block[],
  house: HouseToday = today,
): { variants: VariantHouse[]; complaints: PathComplaint[] } {
  const complaints: PathComplaint[] = [];
  const all = changes.map((change) => asked(change));
  return { variants: readVariants(house, all, paddock, complaints), complaints };
}

/** The one variant of a change without complaints. */
export function variantOf(change: Block, house: HouseToday = today): VariantHouse {
  const { variants, complaints } = variantsOf([change], house);
  const [variant] = variants;
  if (!variant || complaints.length > 0) throw new Error(JSON.stringify(complaints));
  return variant;
}
