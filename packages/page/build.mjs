import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";
import { noticesOf, packagesOf } from "../cli/notices.mjs";

const here = import.meta.dirname;

/** Builds the offline page, one file, with the licences it owes; tells the modules in it. */
export async function buildPage(to) {
  await build({ configFile: join(here, "vite.config.ts"), logLevel: "warn" });
  const modules = JSON.parse(readFileSync(join(here, "dist/modules.json"), "utf8"));
  const notices = noticesOf(packagesOf(modules)).replaceAll("<", "&lt;");
  const page = readFileSync(join(here, "dist/index.html"), "utf8");
  const carried = `<script type="text/plain" id="licences">\n${notices}</script></body>`;
  writeFileSync(
    to,
    page.replace("</body>", () => carried),
  );
  return modules;
}
