import type { Complaint } from "@hoopstay/core";
import { type Document, isNode, isScalar, type LineCounter, visit } from "yaml";

/** Aliases beyond this are not written by hand. */
export const mostAliases = 50;

/** What is wrong with the form of a file: tabs, broken YAML, keys that stand twice, aliases. */
export function formComplaints(
  document: Document.Parsed,
  lines: LineCounter,
  text: string,
  file: string,
): Complaint[] {
  const tabs = tabComplaints(text, file);
  const complaints = new Map(tabs.map((one) => [`tab ${one.line}`, one]));
  const broken = (at: number, given: string): void => {
    const { line } = lines.linePos(at);
    complaints.set(`${line} ${given}`, {
      code: "yaml-broken",
      file,
      line,
      given,
      expected: "well-formed YAML: key, colon, space, value, indented by spaces",
      mend: "Compare the lines around it with the example files.",
    });
  };
  // Tabs make every line after them look broken.
  for (const { code, message, pos } of [...document.errors, ...document.warnings]) {
    if (tabs.length > 0) break;
    broken(pos[0], code === "MULTIPLE_DOCS" ? "a second document (---)" : message);
  }
  const aliases: number[] = [];
  visit(document, {
    Alias: (_, alias) => {
      aliases.push(alias.range?.[0] ?? 0);
    },
    Map: (_, map) => {
      const seen = new Set<string>();
      for (const pair of map.items) {
        const key = String(isNode(pair.key) ? pair.key : "");
        const at = isNode(pair.key) ? (pair.key.range?.[0] ?? 0) : 0;
        if (!isScalar(pair.key)) broken(at, "a key that is no plain word");
        if (seen.has(key)) complaints.set(`key ${at}`, twice(file, lines.linePos(at).line, key));
        seen.add(key);
      }
    },
  });
  const [first = 0] = aliases;
  const list = [...complaints.values()];
  if (aliases.length <= mostAliases) return list;
  return [...list, aliasComplaint(file, lines.linePos(first).line, `${aliases.length} aliases`)];
}

const twice = (file: string, line: number, key: string): Complaint => ({
  code: "key-duplicate",
  file,
  line,
  key,
  given: `"${key}" again`,
  expected: "every key once in its block",
  mend: "Take one of the two out.",
});

export const aliasComplaint = (file: string, line: number, given: string): Complaint => ({
  code: "aliases-too-deep",
  file,
  line,
  given,
  expected: "few aliases, not nested in each other",
  mend: "Write the values out.",
});

function tabComplaints(text: string, file: string): Complaint[] {
  return text.split("\n").flatMap((line, index): Complaint[] => {
    const rest = line.trimStart();
    const indent = line.slice(0, line.length - rest.length);
    // Comments may be indented anyhow, and so may JSON.
    if (!indent.includes("\t") || !rest || /^[#{}[\]"]/.test(rest)) return [];
    return [
      {
        code: "yaml-tab",
        file,
        line: index + 1,
        given: "a tab before the text",
        expected: "spaces: YAML does not allow tabs there",
        mend: "Replace the tab by two spaces a level.",
      },
    ];
  });
}
