import { type System, showWords, type VariantReview } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { titled } from "./titled.ts";

/** What is to be said of the houses: of all of them once, or with those it is true of. Markup. */
export function findingsOf(houses: readonly VariantReview[], system: System): string[] {
  const found = new Map<string, string[]>();
  houses.forEach(({ name, findings }, place) => {
    for (const words of findings) {
      const said = showWords(words, system);
      found.set(said, [...(found.get(said) ?? []), titled(name, place)]);
    }
  });
  return [...found].map(([said, names]) => {
    const whose = names.length === houses.length ? text("all") : names.map(typed).join(", ");
    return `${whose}: ${typed(said)}`;
  });
}
