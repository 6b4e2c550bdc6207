import { createHash } from "node:crypto";
import type { Complaint } from "@hoopstay/core";
import { type Inputs, type ReadMore, readInputs } from "@hoopstay/file";
import { readText } from "./read-text.ts";

export const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

/** Both files from disk, as models; the rest is said at `readInputs`. */
export const loadInputs = (
  houseFile: string,
  siteFile: string,
  readMore?: ReadMore,
  before?: readonly Complaint[],
): Inputs => readInputs(houseFile, siteFile, readText, sha256, readMore, before);
