import {
  type CatalogueSize,
  catalogue,
  massPerLength,
  type Tube,
  tubeOfSize,
} from "@hoopstay/section";
import { stockTube, tubeName } from "../../compare/stock/stock-tube.ts";
import type { House } from "../../model/house-model.ts";
import { steelTubeAt } from "../../model/steel-tube.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { TubeInput } from "../../schema/tube.ts";
import { carriesStub, type DesignRange, standsOnStub, type TubeChoice } from "./design-range.ts";

/** How far from today's tube: outside size and weight by length, as parts of today's. Where to look, not what is safe. */
const sizes = { least: 0.7, most: 1.4 };
const weights = { least: 0.5, most: 1.7 };
/** Bays, as parts of today's number. */
const bays = { least: 0.7, most: 1.5 };
const mostCounts = 9;

const across = (tube: Tube): readonly number[] =>
  tube.kind === "round"
    ? [tube.outside]
    : tube.kind === "rectangular"
      ? [tube.depth, tube.width]
      : [];

const within = (value: number, today: number, range: { least: number; most: number }): boolean =>
  value >= range.least * today && value <= range.most * today;

const isEuropean = (name: string): boolean => /^(CF|HF)/.test(name);

/** A tube of a size, finished as today's, and of its grade where the standard is the same. */
function choiceOf({ name }: CatalogueSize, today: TubeInput): TubeChoice | null {
  const finish = today.galvanized ? { galvanized: true } : {};
  const own = steelTubeAt({ size: name, ...finish });
  if (!own) return null;
  const like = own.steel.standard === steelTubeAt(today)?.steel.standard;
  const grade = like && today.grade ? { grade: today.grade } : {};
  const input: TubeInput = { size: name, ...finish, ...grade };
  return { input, tube: own.tube, name: tubeName(input) };
}

function near(today: TubeInput, tube: Tube): TubeChoice[] {
  const weight = massPerLength(tube);
  const european = steelTubeAt(today)?.steel.standard.startsWith("EN") ?? false;
  return catalogue.flatMap((size): TubeChoice[] => {
    if (size.shape.kind !== tube.kind || isEuropean(size.name) !== european) return [];
    const shape = tubeOfSize(size, false);
    const [mine, other] = [across(tube), across(shape)];
    const like = other.every((side, place) => within(side, mine[place] ?? 0, sizes));
    if (!like || !within(massPerLength(shape), weight, weights)) return [];
    const choice = choiceOf(size, today);
    return choice && stockTube(choice.input).id !== stockTube(today).id ? [choice] : [];
  });
}

/** A range round today's design, from the catalogue; anchors stay as they are fitted. */
export function builtInRange(input: HouseInput, house: House): DesignRange {
  const { links, lines } = house;
  const todays = lines.hoopCount - 1;
  const first = Math.max(1, Math.ceil(bays.least * todays));
  const last = Math.max(first, Math.floor(bays.most * todays));
  const own = (given: TubeInput, tube: Tube): TubeChoice => ({
    input: given,
    tube,
    name: tubeName(given),
  });
  const hoops = near(input.hoops.tube, links.hoop.tube).filter((one) => standsOnStub(house, one));
  const rails = near(input.rails.tube, links.rail.tube).filter((one) => carriesStub(house, one));
  const steps = Math.ceil((last - first + 1) / mostCounts);
  const counts = Array.from({ length: last - first + 1 }, (_, at) => first + at + 1);
  return {
    assumed: true,
    hoops: [own(input.hoops.tube, links.hoop.tube), ...hoops],
    counts: counts.filter((count) => (count - lines.hoopCount) % steps === 0),
    rails: [own(input.rails.tube, links.rail.tube), ...rails],
    anchors: null,
    findings: [
      [
        "No range is asked for: sizes of the catalogue near today's, that fit the stubs, were looked at. Enter search to choose.",
      ],
    ],
  };
}
