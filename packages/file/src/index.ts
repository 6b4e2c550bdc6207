export { type Inputs, type ReadMore, readInputs } from "./inputs/read-inputs.ts";
export type { TextOf } from "./inputs/read-one.ts";
export { type ParsedDocument, parseText } from "./parse/parse-document.ts";
