import { parseText } from "../parse/parse-document.ts";
import { changeText } from "./change-text.ts";
import { goingWith, plainWithout } from "./plain-change.ts";
import { type Path, valueAt } from "./value.ts";

/**
 * A YAML or JSON text without what stands at a path: its lines go, with the comment on them, and so
 * does a parent that would be empty. A path that leads nowhere changes nothing.
 *
 * @throws Refusal where the text is broken
 */
export function without(text: string, path: Path): string {
  if (path.length === 0) throw new RangeError("a path names at least one key");
  const { document, value: whole } = parseText(text, "text");
  if (valueAt(whole, path) === undefined) return text;
  const going = goingWith(whole, path);
  return changeText({
    text,
    document,
    path: going,
    expected: plainWithout(whole, going),
    goes: true,
  });
}
