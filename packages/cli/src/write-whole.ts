import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { Refusal } from "@hoopstay/core";

const placeOf = (file: string): string | undefined => {
  try {
    return realpathSync(file);
  } catch {
    return undefined;
  }
};

/**
 * Refuses, before anything is worked out, a page that would be written over one of the files it is
 * about, or where nothing can be written.
 */
export function refusePlace(page: string, inputs: readonly string[]): void {
  const place = placeOf(page);
  if (place !== undefined && inputs.some((input) => placeOf(input) === place)) {
    throw new Refusal([
      {
        code: "report-unwritable",
        file: page,
        given: "the house or site file itself",
        expected: "a file of its own for the report",
        mend: "Name the report after the house, such as house.html.",
      },
    ]);
  }
  if (place !== undefined && statSync(place).isDirectory()) throw unwritable(page, "a folder");
  try {
    writeFileSync(besideOf(page), "");
    rmSync(besideOf(page));
  } catch (error) {
    throw unwritable(page, reasonOf(error));
  }
}

const besideOf = (file: string): string => `${file}.part`;

const reasonOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? String(error);

const unwritable = (file: string, given: string): Refusal =>
  new Refusal([
    {
      code: "report-unwritable",
      file,
      given,
      expected: "a path that can be written",
      mend: "Does its folder exist? May you write there?",
    },
  ]);

/** Writes a file whole or not at all: beside its place first, then moved there. */
export function writeWhole(file: string, text: string): void {
  const beside = besideOf(file);
  try {
    writeFileSync(beside, text);
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw unwritable(file, reasonOf(error));
  }
}
