import { readFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import {
  type House,
  houseSchema,
  readHouseModel,
  readSiteModel,
  type Site,
  siteSchema,
} from "@hoopstay/house";
import { parse } from "yaml";

/** A file of the fixtures, as parsed. */
export const readFixture = (path: string): unknown =>
  parse(readFileSync(join(process.argv[2] ?? "fixtures", path), "utf8"));

/** An example house and site of the fixtures, in SI. */
export function readExample(houseName: string, siteName: string): { house: House; site: Site } {
  const house = readHouseModel(houseSchema.parse(readFixture(`houses/${houseName}.yaml`)), []);
  const site = readSiteModel(siteSchema.parse(readFixture(`sites/${siteName}.yaml`)), []);
  if (!house || !site) throw new Error("the example is refused");
  return { house, site };
}
