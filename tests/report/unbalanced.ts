const empty = new Set(["meta", "br"]);
/** Elements whose end tag HTML lets one leave out, and what the next start tag closes. */
const closedBy: Readonly<Record<string, readonly string[]>> = {
  td: ["td", "th", "tr"],
  th: ["td", "th", "tr"],
  tr: ["tr"],
};

/** What is wrong with the nesting of a page's tags; nothing where it is well formed. */
export function unbalanced(html: string): string[] {
  const complaints: string[] = [];
  const open: string[] = [];
  const content = html.replace(/<style>[\s\S]*?<\/style>/, "").replace(/^<!doctype html>/, "");
  const tag = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w-]+(?:="[^"<>]*")?)*)\s*(\/?)>/g;
  if (content.replace(tag, "").match(/[<>]/)) complaints.push("a bare < or > is left");
  for (const [, end, name = "", , selfClosed] of content.matchAll(tag)) {
    if (empty.has(name) || selfClosed) continue;
    if (end) {
      while (
        open.at(-1) !== name &&
        open.at(-1) !== undefined &&
        (open.at(-1) as string) in closedBy
      )
        open.pop();
      if (open.pop() !== name) complaints.push(`</${name}> closes nothing`);
      continue;
    }
    while (closedBy[open.at(-1) ?? ""]?.includes(name)) open.pop();
    open.push(name);
  }
  return complaints.concat(open.map((name) => `<${name}> is not closed`));
}
