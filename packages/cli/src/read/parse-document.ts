import { type Complaint, Refusal, type RefusalCode } from "@hoopstay/core";
import { isMap, isNode, isPair, LineCounter, parseDocument, visit } from "yaml";

/** A parsed file: its plain value, and the line on which a path of keys stands. */
export interface ParsedDocument {
  readonly value: unknown;
  lineOf(path: readonly PropertyKey[]): number;
}

/** Aliases beyond this are not written by hand. */
const mostAliases = 50;

/**
 * Parses YAML or JSON text (JSON is YAML), with every complaint about its form at once.
 *
 * @throws Refusal with codes yaml-tab, key-duplicate, aliases-too-deep or yaml-broken
 */
export function parseText(text: string, file: string): ParsedDocument {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, uniqueKeys: false });
  const complaints: Complaint[] = tabComplaints(text, file);
  if (complaints.length === 0) {
    for (const error of document.errors) {
      complaints.push({
        code: "yaml-broken",
        file,
        line: lines.linePos(error.pos[0]).line,
        given: error.message.split("\n")[0] ?? "",
        expected: "well-formed YAML: key, colon, space, value, indented by spaces",
        mend: "Compare the lines around it with the example files.",
      });
    }
  }
  let aliases = 0;
  visit(document, {
    Alias: () => {
      aliases += 1;
    },
    Map: (_, map) => {
      const seen = new Set<string>();
      for (const pair of map.items) {
        const key = String(isNode(pair.key) ? pair.key : "");
        const at = isNode(pair.key) ? pair.key.range?.[0] : undefined;
        if (seen.has(key)) {
          complaints.push({
            code: "key-duplicate",
            file,
            ...(at === undefined ? {} : { line: lines.linePos(at).line }),
            key,
            given: `"${key}" again`,
            expected: "every key once in its block",
            mend: "Take one of the two out.",
          });
        }
        seen.add(key);
      }
    },
  });
  if (aliases > mostAliases) {
    complaints.push(aliasComplaint(file, `${aliases} aliases`));
  }
  if (complaints.length > 0) throw new Refusal(complaints);
  return { value: plainValue(document, file), lineOf: (path) => lineOf(document, lines, path) };
}

const aliasComplaint = (file: string, given: string): Complaint => ({
  code: "aliases-too-deep" satisfies RefusalCode,
  file,
  given,
  expected: "few aliases, not nested in each other",
  mend: "Write the values out.",
});

function plainValue(document: ReturnType<typeof parseDocument>, file: string): unknown {
  try {
    return document.toJS({ maxAliasCount: mostAliases });
  } catch (error) {
    throw new Refusal([aliasComplaint(file, String((error as Error).message).slice(0, 80))]);
  }
}

function tabComplaints(text: string, file: string): Complaint[] {
  return text.split("\n").flatMap((line, index): Complaint[] =>
    /^\s*\t\s*\S/.test(line) && !line.trimStart().startsWith("#") && !/^[\s]*[{}[\]"]/.test(line)
      ? [
          {
            code: "yaml-tab",
            file,
            line: index + 1,
            given: "a tab before the text",
            expected: "spaces: YAML does not allow tabs there",
            mend: "Replace the tab by two spaces a level.",
          },
        ]
      : [],
  );
}

/** Line of the deepest key of a path that exists in the file. */
function lineOf(
  document: ReturnType<typeof parseDocument>,
  lines: LineCounter,
  path: readonly PropertyKey[],
): number {
  let offset = 0;
  let node: unknown = document.contents;
  for (const key of path) {
    if (isMap(node)) {
      const pair = node.items.find((item) => isPair(item) && String(item.key) === String(key));
      if (!pair) break;
      if (isNode(pair.key) && pair.key.range) offset = pair.key.range[0];
      node = pair.value;
    } else {
      node = (node as { get?(key: unknown, keep: boolean): unknown } | null)?.get?.(key, true);
      if (!isNode(node) || !node.range) break;
      offset = node.range[0];
    }
  }
  return lines.linePos(offset).line;
}
