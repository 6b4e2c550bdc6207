import { signal } from "@preact/signals";

const query = matchMedia("(min-width: 64rem)");

/** Whether questions and answers have room side by side; else only what is asked for is made. */
export const isWide = signal(query.matches);

query.addEventListener("change", ({ matches }) => {
  isWide.value = matches;
});
