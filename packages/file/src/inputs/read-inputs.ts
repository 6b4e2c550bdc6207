import { type Complaint, Refusal } from "@hoopstay/core";
import {
  bearingComplaint,
  type House,
  type HouseInput,
  type HouseToday,
  houseComplaints,
  houseSchema,
  type InputRow,
  nowComplaint,
  type PathComplaint,
  readHouseModel,
  readSiteModel,
  type Site,
  siteSchema,
  tieCountComplaints,
} from "@hoopstay/house";
import { placed, placedOrTyped } from "./placed.ts";
import { readOne, type TextOf } from "./read-one.ts";

export interface Inputs {
  readonly house: House;
  readonly site: Site;
  readonly rows: readonly InputRow[];
  readonly digest: string;
  readonly date: string | null;
  /** Both texts, word for word. */
  readonly files: { readonly house: string; readonly site: string };
  readonly today: HouseToday;
}

/** What a command reads besides of a house file that is sound by itself; complaints are collected. */
export type ReadMore = (
  today: HouseToday,
  site: Site | undefined,
  complaints: PathComplaint[],
) => void;

/**
 * Both files checked and turned into models; every complaint about either at once, a file that
 * cannot be read included.
 *
 * @param digestOf SHA-256 of a text as UTF-8, in hexadecimal: each platform has its own
 * @param readMore reads what else a command needs of the house file
 * @param before complaints about the command line, told with those about the files
 */
export function readInputs(
  houseFile: string,
  siteFile: string,
  textOf: TextOf,
  digestOf: (text: string) => string,
  readMore?: ReadMore,
  before: readonly Complaint[] = [],
): Inputs {
  const complaints: Complaint[] = [...before];
  const houseModel = (input: HouseInput, found: PathComplaint[]): House | undefined => {
    found.push(...houseComplaints(input), ...tieCountComplaints(input));
    return readHouseModel(input, found);
  };
  const house = readOne(houseFile, textOf, "house", houseSchema, houseModel, complaints);
  const site = readOne(siteFile, textOf, "site", siteSchema, readSiteModel, complaints);
  const { document } = site;
  if (house.model && site.model && document) {
    const tell = (found: Omit<PathComplaint, "path"> | null, path: string[]): void => {
      if (found) complaints.push(...placed([{ ...found, path }], siteFile, document));
    };
    tell(nowComplaint(house.model, site.model), ["now"]);
    tell(bearingComplaint(house.model, site.model), ["ground", "bearing"]);
  }
  const today = house.model &&
    house.input && { document: house.value, input: house.input, house: house.model };
  if (readMore && today && house.document) {
    const found: PathComplaint[] = [];
    readMore(today, site.model, found);
    complaints.push(...placedOrTyped(found, houseFile, house.document));
  }
  if (complaints.length > 0 || !today || !site.model) throw new Refusal(complaints);
  const { date } = site.value as { date?: unknown };
  return {
    house: today.house,
    site: site.model,
    today,
    rows: [...house.rows, ...site.rows],
    digest: digestOf(`${house.text}\0${site.text}`),
    date: typeof date === "string" ? date : null,
    files: { house: house.text, site: site.text },
  };
}
