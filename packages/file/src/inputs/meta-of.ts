import type { ReviewMeta } from "@hoopstay/house";
import type { Inputs } from "./read-inputs.ts";

/** What a review of both files cannot know by itself; `version` is that of the program. */
export const metaOf = ({ digest, date, files, rows }: Inputs, version: string): ReviewMeta => ({
  version,
  digest,
  date,
  files,
  inputs: rows,
});
