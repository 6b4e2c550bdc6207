import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import process from "node:process";
import { refusalCodes } from "@hoopstay/core";
import { cautions, notChecked } from "@hoopstay/house";
import { afterAll, describe, expect, test } from "vitest";

const root = resolve(import.meta.dirname, "../..");
const read = (name: string): string => readFileSync(join(root, name), "utf8");
const documents = ["README.md", "SAFETY.md", "DEVELOPERS.md"] as const;
const readme = read("README.md");
const safety = read("SAFETY.md");

const folder = mkdtempSync(join(tmpdir(), "docs-"));
afterAll(() => rmSync(folder, { recursive: true }));

const program = "node packages/cli/dist/hoopstay.js";

/** Fenced blocks of a document in order: language and text. */
const blocks = [...readme.matchAll(/^```(\w*)\n([\s\S]*?)^```$/gm)].map(
  ([, language = "", text = ""]) => ({ language, text }),
);

/** Words of a command line; what stands in quotes is one. */
const wordsOf = (line: string): string[] =>
  [...line.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);

/** Runs a command line of the README; a page it writes goes to a folder of its own. */
function hoopstay(line: string) {
  const args = wordsOf(line.slice(program.length));
  const at = args.findIndex((one) => one === "--report" || one === "--to") + 1;
  const report = at > 0 ? (args[at] ?? "") : undefined;
  const written = report === undefined ? undefined : join(folder, basename(report));
  if (written !== undefined) args[at] = written;
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["packages/cli/dist/hoopstay.js", ...args],
    { cwd: root, encoding: "utf8", maxBuffer: 1e8 },
  );
  const shown = written === undefined ? stdout : stdout.replace(written, report ?? "");
  return { status, stderr, shown, written };
}

/** An answer is printed whole, or up to a line of dots. */
function expectShown(shown: string, answer: string): void {
  const [start = "", rest] = answer.split(/^\.\.\.\n/m);
  if (rest === undefined) expect(shown).toBe(answer);
  else expect(shown.slice(0, start.length)).toBe(start);
}

describe("README", () => {
  test("its first paragraph says who, what they must decide and what is answered", () => {
    const first = readme.split(/\n\n/)[1] ?? "";
    for (const word of [/own, move or review/, /must decide/, /answers/]) {
      expect(first).toMatch(word);
    }
  });

  test("names the two commands and sends the reader to an engineer", () => {
    expect(readme).toMatch(/^npm start\b/m);
    expect(readme).toMatch(/^npm test\b/m);
    expect(readme).toContain("Consult a licensed engineer");
  });

  const commands = blocks.flatMap(({ language, text }, place) =>
    language === "sh"
      ? text
          .split("\n")
          .filter((line) => line.startsWith(program))
          .map((line, index, lines) => {
            const next = blocks[place + 1];
            const alone = lines.length === 1 && index === 0;
            const answer = next?.language === "text" && alone ? next.text : undefined;
            return { line, answer };
          })
      : [],
  );

  test("has commands to run", () => expect(commands.length).toBeGreaterThan(5));

  test.each(commands)("$line", ({ line, answer }) => {
    const { status, stderr, shown, written } = hoopstay(line);
    expect([0, 1], stderr).toContain(status);
    // A search tells on the way how far it is.
    expect(stderr.replaceAll(/^\d+ (of \d+ )?designs\b.*\n/gm, "")).toBe("");
    expect(shown.length).toBeGreaterThan(0);
    if (written !== undefined) expect(existsSync(written)).toBe(true);
    if (answer !== undefined) expectShown(shown, answer);
  });

  const files = blocks.filter(({ language }) => language === "yaml").map(({ text }) => text);
  const houses = files.filter((text) => text.startsWith("house:"));
  const sites = files.filter((text) => text.startsWith("site:"));

  const examples = ["fixtures/houses", "fixtures/sites"].flatMap((inside) =>
    readdirSync(join(root, inside)).map((name) => read(join(inside, name))),
  );

  test("every file it shows is a whole house or site, or stands word for word in an example", () => {
    const parts = files.filter((text) => !houses.includes(text) && !sites.includes(text));
    const strange = parts.filter((part) => !examples.some((text) => text.includes(`\n${part}`)));
    expect(strange).toEqual([]);
    expect(houses.length).toBeGreaterThan(0);
    expect(sites.length).toBeGreaterThan(0);
  });

  test.each(houses)("house file of the README, number %#", (house) => {
    const built = !house.includes("only_these_states");
    for (const site of sites) {
      writeFileSync(join(folder, "house.yaml"), house);
      writeFileSync(join(folder, "site.yaml"), built ? site : site.replace(/^now: .*\n/m, ""));
      const files = `${join(folder, "house.yaml")} ${join(folder, "site.yaml")}`;
      const { status, stderr, shown } = hoopstay(`${program} check ${files}`);
      expect([0, 1], stderr).toContain(status);
      if (built) expect(shown).toContain("As it stands now");
      const links = hoopstay(`${program} first ${files} --report links.html`);
      expect([0, 1], links.stderr).toContain(links.status);
    }
  });
});

describe.each(documents)("%s", (name) => {
  const text = read(name);
  const listed: { report: string }[] = JSON.parse(read(".ci/reports.json"));
  const generated = new Set(listed.map(({ report }) => report));
  const quoted = [...text.matchAll(/`([^`\n]+)`/g)].map(([, inside = ""]) => inside);
  const linked = [...text.matchAll(/\]\(([^)#]+)[^)]*\)/g)].map(([, target = ""]) => target);
  const inFolders = /^(packages|fixtures|tests|reports|\.ci)(\/[\w.@-]+)+$/;
  const named = [...quoted.filter((one) => inFolders.test(one)), ...linked];

  test("every file it names exists", () => {
    const missing = named.filter((file) => !generated.has(file) && !existsSync(join(root, file)));
    expect(missing).toEqual([]);
  });

  test("names no place outside the repository", () => {
    expect(text).not.toMatch(/https?:\/\//);
    expect(text).not.toMatch(/(^|[\s`("'])\/(?!\/)[a-z]+\/[\w.-]/m);
  });
});

describe("SAFETY.md", () => {
  test("lists every refusal with its exit code and meaning, and no other", () => {
    const rows = [...safety.matchAll(/^\| `([a-z0-9-]+)` \| (\d+) \| (.+) \|$/gm)].map(
      ([, code = "", exit = "", meaning = ""]) => [code, Number(exit), meaning],
    );
    const codes = Object.entries(refusalCodes).map(([code, { exit, meaning }]) => [
      code,
      exit,
      meaning,
    ]);
    expect(rows).toEqual(codes);
  });

  const bullets = safety
    .split("\n")
    .filter((line) => line.startsWith("- "))
    .map((line) => line.slice(2));

  test.each(cautions)("caution: %s", (caution) => expect(bullets).toContain(caution));
  test.each(notChecked)("not checked: %s", (what) => expect(bullets).toContain(what));
});
