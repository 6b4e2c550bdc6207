import { renameSync, rmSync, writeFileSync } from "node:fs";
import { Refusal } from "@hoopstay/core";

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
