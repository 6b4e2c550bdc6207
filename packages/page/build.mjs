import { cpSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";

const here = import.meta.dirname;

/** Builds the offline page, one file, and puts it where it is asked for. */
export async function buildPage(to) {
  await build({ configFile: join(here, "vite.config.ts"), logLevel: "warn" });
  cpSync(join(here, "dist/index.html"), to);
}
