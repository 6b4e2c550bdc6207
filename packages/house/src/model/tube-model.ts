import {
  type CatalogueSize,
  catalogue,
  findSize,
  nearestSizes,
  type Tube,
  tubeOfSize,
  wallOfGauge,
} from "@hoopstay/section";
import type { Path, PathComplaint } from "../read/complaints.ts";
import { type TubeInput, tubeStandards } from "../schema/tube.ts";

/** A tube of the house file as a section, or the complaints about it. */
export function tubeModel(
  input: TubeInput,
  path: Path,
  complaints: PathComplaint[],
): Tube | undefined {
  const galvanized = input.galvanized ?? false;
  if (input.size !== undefined) {
    const found = findSize(input.size);
    if (found) return tubeOfSize(found, galvanized);
    complaints.push({
      path: [...path, "size"],
      code: "size-unknown",
      given: input.size,
      expected: "a catalogue size",
      mend: `Nearest: ${sizesFor(path, input.size).join(", ")}; or give outside and wall.`,
    });
    return undefined;
  }
  const wall = wallModel(input, path, complaints);
  const convention = tubeStandards[input.standard ?? "other"];
  const round = input.outside !== undefined;
  const sides = input.depth !== undefined && input.width !== undefined;
  if (round === sides) {
    complaints.push({
      path,
      code: "key-missing",
      expected: "size, or outside (round), or depth and width (rectangular)",
      mend: "Give one of the three, for example outside: 2.375 in",
    });
    return undefined;
  }
  if (wall === undefined) return undefined;
  const least = Math.min(
    input.outside?.value ?? Number.POSITIVE_INFINITY,
    input.depth?.value ?? Number.POSITIVE_INFINITY,
    input.width?.value ?? Number.POSITIVE_INFINITY,
  );
  if (wall >= 0.25 * least) {
    complaints.push({
      path,
      code: "sizes-disagree",
      given: `wall ${input.wall?.text ?? input.gauge}`,
      expected: "a wall below a quarter of the outside size",
      mend: "Check the wall and its unit.",
    });
    return undefined;
  }
  if (round) {
    return { kind: "round", outside: input.outside?.value ?? 0, wall, convention, galvanized };
  }
  return {
    kind: "rectangular",
    depth: input.depth?.value ?? 0,
    width: input.width?.value ?? 0,
    wall,
    convention,
    galvanized,
  };
}

/** Names of the nearest sizes that may stand at a path: hoops are round, rails no angles. */
function sizesFor(path: Path, size: string): string[] {
  const fits = ({ shape }: CatalogueSize): boolean =>
    path.includes("hoops")
      ? shape.kind === "round"
      : !path.includes("rails") || shape.kind !== "angle";
  return nearestSizes(size, catalogue.length)
    .filter(fits)
    .slice(0, 3)
    .map(({ name }) => name);
}

function wallModel(input: TubeInput, path: Path, complaints: PathComplaint[]): number | undefined {
  if (input.wall) return input.wall.value;
  if (input.gauge === undefined) {
    complaints.push({
      path: [...path, "wall"],
      code: "key-missing",
      expected: "the wall thickness, or gauge with gauge_table",
      mend: "Measure the wall with a calliper at a cut end.",
    });
    return undefined;
  }
  const given = `gauge ${input.gauge}`;
  if (!input.gauge_table) {
    complaints.push({
      path: [...path, "gauge"],
      code: "gauge-without-table",
      given,
      expected:
        "gauge_table beside it: birmingham, manufacturers-standard, galvanized-sheet, us-standard",
      mend: "The tables differ (14 gauge: 0.083, 0.0747, 0.0785 in). Give the table, or the wall in inches.",
    });
    return undefined;
  }
  const wall = wallOfGauge(input.gauge, input.gauge_table);
  if (wall === undefined) {
    complaints.push({
      path: [...path, "gauge"],
      code: "out-of-range",
      given,
      expected: `a gauge that stands in the ${input.gauge_table} table`,
      mend: "Give the wall in inches or millimetres.",
    });
  }
  return wall;
}
