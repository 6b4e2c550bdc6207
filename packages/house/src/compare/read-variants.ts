import type { Site } from "../model/site-model.ts";
import { bearingComplaint } from "../read/bearing-complaint.ts";
import type { Path, PathComplaint } from "../read/complaints.ts";
import { nowComplaint } from "../state/states.ts";
import type { AskedVariant } from "./asked-variant.ts";
import { type HouseToday, readVariant, type VariantHouse } from "./read-variant.ts";
import { priceComplaints } from "./stock/price-complaints.ts";

/** More variants than this do not stand side by side. */
const mostVariants = 6;

/** The variants of a house file as they stand in it: what is changed, before anything is read of it. */
function variantsOfFile({ document }: HouseToday): AskedVariant[] {
  const { variants = [] } = document as { variants?: readonly Omit<AskedVariant, "at">[] };
  return variants.map(({ name, change }, index) => {
    return { name, change, at: ["variants", index, "change"] };
  });
}

const siteChecks = [nowComplaint, bearingComplaint] as const;

/**
 * A variant that cannot stand at this site: a state that it lacks, ground that it sinks into. What
 * is wrong with today's house there too is complained of once, elsewhere.
 */
function siteComplaints(
  { house }: VariantHouse,
  today: HouseToday,
  site: Site,
  at: Path,
): PathComplaint[] {
  return siteChecks.flatMap((check) => {
    const found = check(house, site);
    if (!found || check(today.house, site)) return [];
    const { file: _, line: _l, key: _k, ...complaint } = found;
    return [{ ...complaint, path: at }];
  });
}

/**
 * The variants to set beside today's house: those asked for, or where none are, those of its file.
 *
 * @param site null where its file was refused
 * @param complaints collects what is wrong with any of them
 */
export function readVariants(
  today: HouseToday,
  asked: readonly AskedVariant[],
  site: Site | undefined,
  complaints: PathComplaint[],
): VariantHouse[] {
  complaints.push(...priceComplaints(today.input));
  const all = asked.length > 0 ? asked : variantsOfFile(today);
  if (all.length === 0) {
    complaints.push({
      path: ["variants"],
      code: "key-missing",
      expected: "variants to set beside today's house",
      mend: 'List some under variants, or ask for one: --with "rails.tube.size=HSS3X3X1/8"',
    });
  }
  if (all.length > mostVariants) {
    complaints.push({
      path: all[mostVariants]?.at ?? [],
      code: "out-of-range",
      given: `${all.length} variants`,
      expected: `at most ${mostVariants}`,
      mend: "Set fewer side by side.",
    });
  }
  return all.slice(0, mostVariants).flatMap((one) => {
    const variant = readVariant(today, one, complaints);
    if (!variant) return [];
    if (site) complaints.push(...siteComplaints(variant, today, site, one.at));
    return [variant];
  });
}
