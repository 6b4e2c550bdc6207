import { Refusal } from "@hoopstay/core";
import { type Document, LineCounter, parseDocument, visit } from "yaml";
import { aliasComplaint, formComplaints, mostAliases } from "./form-complaints.ts";
import { Lately } from "./lately.ts";
import { lineOf } from "./line-of.ts";
import { type TypedNumber, typedNumber } from "./typed-number.ts";

/** A parsed file: its plain value, the line on which a path of keys stands, a number there. */
export interface ParsedDocument {
  readonly value: unknown;
  lineOf(path: readonly PropertyKey[]): number;
  typedNumber(path: readonly PropertyKey[]): TypedNumber | undefined;
}

/** The same with the library's tree, for changes of a text. */
interface ParsedTree extends ParsedDocument {
  readonly document: Document.Parsed;
}

const lately = new Lately<ParsedTree>();

/**
 * Parses YAML or JSON text (JSON is YAML), with every complaint about its form at once. The last texts
 * are remembered: neither tree nor value is to be changed.
 *
 * @throws Refusal with codes yaml-tab, key-duplicate, aliases-too-deep or yaml-broken
 */
export const parseText = (text: string, file: string): ParsedTree =>
  lately.of(text, () => parseAnew(text, file));

/** The same with a tree of its own, which may be changed. */
export function parseAnew(text: string, file: string): ParsedTree {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "error",
    keepSourceTokens: true,
  });
  const complaints = formComplaints(document, lines, text, file);
  if (complaints.length > 0) throw new Refusal(complaints);
  const plain = (): unknown => {
    try {
      return document.toJS({ maxAliasCount: mostAliases });
    } catch (error) {
      let at = 0;
      visit(document, {
        Alias: (_, alias) => {
          at = alias.range?.[0] ?? 0;
          return visit.BREAK;
        },
      });
      const given = String((error as Error).message).slice(0, 80);
      throw new Refusal([aliasComplaint(file, lines.linePos(at).line, given)]);
    }
  };
  return {
    document,
    value: plain(),
    lineOf: (path) => lineOf(document, lines, path),
    typedNumber: (path) => typedNumber(document, path),
  };
}
