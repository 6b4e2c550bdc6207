import { angles } from "./angles.ts";
import { europeanHollow } from "./european-hollow.ts";
import { fenceTube } from "./fence-tube.ts";
import { pipe } from "./pipe.ts";
import { plainName } from "./plain-name.ts";
import { rectangularHss } from "./rectangular-hss.ts";
import { roundHss } from "./round-hss.ts";
import type { CatalogueSize } from "./size.ts";

/** Every catalogue size, family by family. */
export const catalogue: readonly CatalogueSize[] = [
  ...fenceTube,
  ...pipe,
  ...roundHss,
  ...rectangularHss,
  ...europeanHollow,
  ...angles,
];

let spellings: ReadonlyMap<string, CatalogueSize> | undefined;

/** Every spelling of every size, made plain, with the size it means. Built when first asked for. */
export function plainSpellings(): ReadonlyMap<string, CatalogueSize> {
  spellings ??= new Map(
    catalogue.flatMap((size) =>
      [size.name, ...size.aliases].map((spelling) => [plainName(spelling), size] as const),
    ),
  );
  return spellings;
}
