import type { FileName } from "../engine/messages.ts";

/** Frames in which a view, the folds around a question and the room they take come to stand. */
const settling = 20;

/**
 * Goes to a question: opens what is folded around it, brings it into sight and puts the cursor there. As far
 * as it can be followed: the group of a question that is not shown.
 */
export function goTo(section: string, file: FileName, path: readonly string[]): void {
  const places = [
    ...path.map((_, left) => {
      const key = path.slice(0, path.length - left).join(".");
      return `[data-key="${CSS.escape(`${file} ${key}`)}"]`;
    }),
    `#${CSS.escape(section)}`,
  ];
  const step = (left: number): void => {
    const found = places.map((place) => document.querySelector(place)).find((one) => one);
    for (let fold = found?.closest("details"); fold; fold = fold.parentElement?.closest("details"))
      fold.open = true;
    found?.scrollIntoView({ block: "center" });
    if (left > 0) requestAnimationFrame(() => step(left - 1));
    else found?.querySelector<HTMLElement>("input, select, button, summary")?.focus();
  };
  requestAnimationFrame(() => step(settling));
}
