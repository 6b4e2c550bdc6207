import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Texts } from "@hoopstay/evidence";

const root = resolve(import.meta.dirname, "../../fixtures");

/** Every file of published values, by its path under `fixtures`. */
export const fixtureTexts: Texts = Object.fromEntries(
  ["published", "statics", "independent"].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.(yaml|json)$/.test(name))
      .map((name) => [
        `${folder}/${name.replaceAll("\\", "/")}`,
        readFileSync(join(root, folder, name), "utf8"),
      ]),
  ),
);
