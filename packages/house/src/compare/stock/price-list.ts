import { FOOT } from "@hoopstay/core";
import type { SteelTube } from "../../model/steel-tube.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { TubeInput } from "../../schema/tube.ts";
import { valueAt } from "../changed-document.ts";
import { type StockTube, sameSection, stockTube } from "./stock-tube.ts";

/** A tube as it is sold: length of a stick, m, and its price where that was told. */
interface StockEntry {
  readonly tube: SteelTube;
  readonly length: number;
  readonly price: number | null;
}

/** What the house file tells of prices. */
export interface PriceList {
  /** Null where the file has no prices. */
  readonly currency: string | null;
  readonly sawCut: number;
  readonly sawCutAssumed: boolean;
  readonly stock: readonly StockEntry[];
  /** Of one anchor by its kind; null stands for those whose pull was entered. */
  readonly anchors: ReadonlyMap<string | null, number>;
}

/**
 * Where nothing is told: a cut-off disc of 1/8 in; sticks of 24 ft, European tube of 6 m. Common
 * practice, no source; they only decide how many sticks are listed.
 */
const assumedSawCut = FOOT / 96;
const assumedLength = { american: 24 * FOOT, european: 6 } as const;

/** The tube of an entry: its own, or the one that stands at a key of the house file. */
const tubeOf = (input: HouseInput, entry: { tube?: TubeInput; for?: string }): TubeInput =>
  entry.tube ?? (valueAt(input, (entry.for ?? "").split(".")) as TubeInput);

/** The prices of a house file without complaints; keys in `for` mean the tubes of today's house. */
export function priceList(input: HouseInput): PriceList {
  const { prices } = input;
  const sawCut = prices?.saw_cut?.value;
  return {
    currency: prices?.currency ?? null,
    sawCut: sawCut ?? assumedSawCut,
    sawCutAssumed: sawCut === undefined,
    stock: (prices?.stock ?? []).map(({ length, price, ...entry }) => ({
      tube: stockTube(tubeOf(input, entry as { tube?: TubeInput; for?: string })),
      length: length.value,
      price: price ?? null,
    })),
    anchors: new Map((prices?.anchors ?? []).map(({ kind = null, price }) => [kind, price])),
  };
}

/** An entry is for a tube of the same section, finish and standard; a grade counts where it tells one. */
const isFor = ({ tube: entry }: StockEntry, { tube, steel }: StockTube): boolean =>
  sameSection(entry.tube, tube) &&
  entry.steel.standard === steel.standard &&
  (entry.steel.grade === null || entry.steel.grade === steel.grade);

/** The sticks that a tube can be cut from; one of a common length where none are told. */
export function sticksOf(
  list: PriceList,
  tube: StockTube,
): readonly {
  readonly length: number;
  readonly price: number | null;
  readonly assumed: boolean;
}[] {
  const told = list.stock.filter((entry) => isFor(entry, tube));
  if (told.length > 0) {
    return told.map(({ length, price }) => ({ length, price, assumed: false }));
  }
  const european = tube.steel.standard.startsWith("EN");
  const length = european ? assumedLength.european : assumedLength.american;
  return [{ length, price: null, assumed: true }];
}
