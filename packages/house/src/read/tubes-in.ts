import type { HouseInput } from "../schema/house-schema.ts";
import type { TubeInput } from "../schema/tube.ts";
import type { Path } from "./complaints.ts";

interface TubeAt {
  readonly path: Path;
  readonly tube: TubeInput;
}

/** Every tube of a house file with its path; what variants change is read with them. */
export const tubesIn = ({ variants: _, ...house }: HouseInput): TubeAt[] => within(house, []);

/** Tubes stand under `tube` or `pipe`. */
function within(value: unknown, path: Path): TubeAt[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => {
    const here = [...path, key];
    return key === "tube" || key === "pipe" ? [{ path: here, tube: part }] : within(part, here);
  });
}
