export type { Path, Value } from "./edit/value.ts";
export { withValue } from "./edit/with-value.ts";
export { without } from "./edit/without.ts";
export { metaOf } from "./inputs/meta-of.ts";
export { mostBytes, notText, tooLarge } from "./inputs/no-text.ts";
export { type Inputs, type ReadMore, readInputs } from "./inputs/read-inputs.ts";
export type { TextOf } from "./inputs/read-one.ts";
export { type ParsedDocument, parseText } from "./parse/parse-document.ts";
