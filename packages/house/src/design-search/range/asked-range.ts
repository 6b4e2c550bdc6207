import { tubeName } from "../../compare/stock/stock-tube.ts";
import type { House } from "../../model/house-model.ts";
import { tubeModel } from "../../model/tube-model.ts";
import type { Path, PathComplaint } from "../../read/complaints.ts";
import { nearest } from "../../read/nearest.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { SearchInput } from "../../schema/search.ts";
import type { TubeInput } from "../../schema/tube.ts";
import type { DesignRange, TubeChoice } from "./design-range.ts";

/** Tubes of one shape; complaints about the others. */
function choicesOf(
  tubes: readonly TubeInput[],
  path: Path,
  kinds: readonly string[],
  complaints: PathComplaint[],
): TubeChoice[] {
  return tubes.flatMap((input, index): TubeChoice[] => {
    const here = [...path, index];
    const tube = tubeModel(input, here, complaints);
    if (!tube) return [];
    if (kinds.includes(tube.kind)) return [{ input, tube, name: tubeName(input) }];
    complaints.push({
      path: here,
      code: "wrong-kind",
      given: tubeName(input),
      expected: `a ${kinds.join(" or ")} tube`,
      mend: "Take a size of that shape.",
    });
    return [];
  });
}

/** Numbers of hoops, as given or by spacings that divide the house into whole bays. */
function countsOf(
  { spacing, counts }: NonNullable<SearchInput["hoops"]>,
  { length }: HouseInput["hoops"],
  today: number,
  complaints: PathComplaint[],
): number[] {
  if (spacing && counts) {
    complaints.push({
      path: ["search", "hoops", "counts"],
      code: "sizes-disagree",
      given: "counts beside spacing",
      expected: "either of the two",
      mend: "Take one out.",
    });
  }
  if (counts) return [...new Set(counts)];
  if (!spacing) return [today];
  const found = spacing.map((each, index) => {
    const bays = Math.max(1, Math.round(length.value / each.value));
    if (Math.abs(bays * each.value - length.value) >= 0.01 * each.value) {
      complaints.push({
        path: ["search", "hoops", "spacing", index],
        code: "sizes-disagree",
        given: `${each.text} in ${length.text}`,
        expected: "a spacing that divides the length into whole bays",
        mend: `Give counts instead of spacing; ${bays + 1} hoops come nearest.`,
      });
    }
    return bays + 1;
  });
  return [...new Set(found)];
}

function anchorsOf(
  { anchors }: SearchInput,
  { anchor_kinds: kinds = [] }: HouseInput,
  complaints: PathComplaint[],
): DesignRange["anchors"] {
  if (!anchors) return null;
  const known = kinds.map(({ id }) => id);
  const { kind, per_rail: perRail } = anchors;
  if (!known.includes(kind)) {
    const near = nearest(kind, known);
    complaints.push({
      path: ["search", "anchors", "kind"],
      code: "wrong-kind",
      given: kind,
      expected: known.length > 0 ? `one of: ${known.join(", ")}` : "an id of anchor_kinds",
      mend: near ? `Did you mean "${near}"?` : "List the kind under anchor_kinds.",
    });
  }
  return { kind, perRail: [...new Set(perRail)] };
}

/** The range that a house file asks for; what it leaves out stays as it is today. */
export function askedRange(
  input: HouseInput,
  house: House,
  search: SearchInput,
  complaints: PathComplaint[],
): DesignRange {
  const { hoops, rails } = search;
  const today = (
    given: TubeInput,
    { tube }: { readonly tube: TubeChoice["tube"] },
  ): TubeChoice[] => [{ input: given, tube, name: tubeName(given) }];
  const { links, lines } = house;
  return {
    assumed: false,
    hoops: hoops?.tubes
      ? choicesOf(hoops.tubes, ["search", "hoops", "tubes"], ["round"], complaints)
      : today(input.hoops.tube, links.hoop),
    counts: countsOf(hoops ?? {}, input.hoops, lines.hoopCount, complaints),
    rails: rails
      ? choicesOf(rails.tubes, ["search", "rails", "tubes"], ["rectangular", "round"], complaints)
      : today(input.rails.tube, links.rail),
    anchors: anchorsOf(search, input, complaints),
    findings: [],
  };
}
