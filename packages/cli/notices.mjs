import { readdirSync, readFileSync, realpathSync } from "node:fs";
import { join } from "node:path";

/** The packages that modules come from, by name, with version, licence and its text. */
export function packagesOf(modules) {
  const inside = /^.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//;
  const folders = modules.map((file) => inside.exec(file)?.[0]).filter(Boolean);
  const found = [...new Set(folders.map((folder) => realpathSync(folder)))].map((folder) => {
    const { name, version, license } = JSON.parse(
      readFileSync(join(folder, "package.json"), "utf8"),
    );
    const fileOf = (pattern) => readdirSync(folder).find((one) => pattern.test(one));
    const file = fileOf(/^licen[cs]e(\.\w+)?$/i);
    // The Apache licence asks that a notice goes with copies, where there is one.
    const notice = fileOf(/^notice(\.\w+)?$/i);
    if (!file) throw new Error(`${name} ${version} ships without the text of its licence`);
    const text = [file, notice]
      .filter(Boolean)
      .map((one) => readFileSync(join(folder, one), "utf8").trim())
      .join("\n\n");
    return { name, version, license, text };
  });
  return found.sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** What a bundle owes the packages in it: each licence's text, once where several share it. */
export function noticesOf(packages) {
  const texts = new Map();
  for (const { name, version, license, text } of packages) {
    const holder = text.match(/^.*copyright .*\d{4}.*$/im)?.[0].trim() ?? "";
    const body = text
      .replace(/^\W*(the )?(mit|isc)[^\n]{0,30}\n+/i, "")
      .replace(/^.*copyright .*\d{4}.*$\n?/im, "");
    const key = body.replace(/[\s"'“”]+/g, " ").trim();
    const entry = texts.get(key) ?? { body: body.trim(), heads: [] };
    entry.heads.push(`${name} ${version} (${license})${holder && `: ${holder}`}`);
    texts.set(key, entry);
  }
  const parts = [...texts.values()].map(({ body, heads }) => `${heads.join("\n")}\n\n${body}\n`);
  return `Made with these packages, under their licences.\n\n${parts.join(`\n${"-".repeat(40)}\n\n`)}`;
}
