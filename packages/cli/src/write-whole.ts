import { realpathSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { Refusal } from "@hoopstay/core";

const placeOf = (file: string): string | undefined => {
  try {
    return realpathSync(file);
  } catch {
    return undefined;
  }
};

/** Refuses a report that would be written over one of the files it is about. */
export function refuseInput(report: string, inputs: readonly string[]): void {
  const place = placeOf(report);
  if (place === undefined || !inputs.some((input) => placeOf(input) === place)) return;
  throw new Refusal([
    {
      code: "report-unwritable",
      file: report,
      given: "the house or site file itself",
      expected: "a file of its own for the report",
      mend: "Name the report after the house, such as house.html.",
    },
  ]);
}

/** Writes a file whole or not at all: beside its place first, then moved there. */
export function writeWhole(file: string, text: string): void {
  const beside = `${file}.part`;
  try {
    writeFileSync(beside, text);
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new Refusal([
      {
        code: "report-unwritable",
        file,
        given: (error as NodeJS.ErrnoException).code ?? String(error),
        expected: "a path that can be written",
        mend: "Does its folder exist? May you write there?",
      },
    ]);
  }
}
