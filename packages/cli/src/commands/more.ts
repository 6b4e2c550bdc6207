/** The commands beside `check`: a bundle of their own, so that a check starts without them. */
export { card } from "./card.ts";
export { compare } from "./compare.ts";
export { first } from "./first.ts";
export { hold } from "./hold.ts";
export { ladder } from "./ladder.ts";
export { page } from "./page.ts";
export { pulls } from "./pulls.ts";
export { recheck } from "./recheck.ts";
export { search } from "./search.ts";
export { serve } from "./serve.ts";
