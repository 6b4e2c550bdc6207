import { type Inputs, metaOf, readInputs } from "@hoopstay/file";
import { type Evaluation, evaluate, type ReviewMeta } from "@hoopstay/house";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { fileNames } from "./file-names.ts";
import type { Texts } from "./messages.ts";

/** Both files read, and the house evaluated. */
export interface Loaded {
  readonly texts: Texts;
  readonly inputs: Inputs;
  readonly evaluation: Evaluation;
  readonly meta: ReviewMeta;
}

const digest = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

let last: Loaded | undefined;

/**
 * Both files as the command line reads them; the last ones are remembered.
 *
 * @throws Refusal with every complaint about either
 */
export function load(texts: Texts): Loaded {
  if (last && last.texts.house === texts.house && last.texts.site === texts.site) return last;
  const textOf = (file: string): string => (file === fileNames.house ? texts.house : texts.site);
  const inputs = readInputs(fileNames.house, fileNames.site, textOf, digest);
  last = {
    texts,
    inputs,
    evaluation: evaluate(inputs.house, inputs.site),
    meta: metaOf(inputs, __VERSION__),
  };
  return last;
}
