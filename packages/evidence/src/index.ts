export { type ChapterId, chapterIds } from "./chapters.ts";
export { chapterRows, makeEvidence } from "./evidence.ts";
export { Given } from "./published/given.ts";
export { readPublished, type Texts } from "./published/read-published.ts";
export { unreached } from "./reach/unreached.ts";
export { tubeOf } from "./subject/tube-columns.ts";
