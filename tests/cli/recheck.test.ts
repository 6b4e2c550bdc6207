import { readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { buildOnce, fixture, inFolder, type Ran, run } from "./program.ts";

beforeAll(buildOnce);

const root = resolve(import.meta.dirname, "../..");
const listed = JSON.parse(readFileSync(join(root, ".ci/reports.json"), "utf8"));
const committed: string[] = listed.map(({ report }: { report: string }) => report);
const files = [fixture("houses/harrow-brook.yaml"), fixture("sites/hill-top.yaml")];

/** What the command says of a page, under a name of its own. */
const recheck = (html: string): Promise<Ran> =>
  inFolder(async (folder) => {
    writeFileSync(join(folder, "report.html"), html);
    return run(folder, ["recheck", "report.html"]);
  });

const written = (args: readonly string[], option = "--report"): Promise<string> =>
  inFolder(async (folder) => {
    await run(folder, [...args, option, "report.html"]);
    return readFileSync(join(folder, "report.html"), "utf8");
  });

const oneLine = (text: string): string => text.replace(/\s+/g, " ");

describe("a report made again from the files in it", () => {
  test.each(committed)("%s", async (name) => {
    const { code, stdout, stderr } = await run(root, ["recheck", name]);
    expect(stderr).toBe("");
    expect(code).toBe(0);
    expect(stdout).toMatch(/^THE SAME {3}\S/);
    for (const line of stdout.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
  });

  test.each([["check", "--case", "A001", "--units", "si"], ["first"]])(
    "%s %s",
    async (name, ...options) => {
      const { code, stdout } = await recheck(await written([name, ...files, ...options]));
      expect(code).toBe(0);
      expect(stdout).toMatch(/to the last\s+sign/);
    },
  );
});

describe("a page that is not what its files give", async () => {
  buildOnce();
  const html = await written(["check", ...files]);
  const [shown = "", data = ""] = html.split('<script type="application/json"');
  const joined = (markup: string, carried: string): string =>
    `${markup}<script type="application/json"${carried}`;

  test("a number changed by hand is shown beside what it should be", async () => {
    const [, value = ""] = /<b>(\d\.\d\d)<\/b>|<td>(\d\.\d\d)</.exec(shown) ?? [];
    const number = value || (/<td>(\d\.\d\d)</.exec(shown)?.[1] ?? "");
    const changed = shown.replace(number, "0.07");
    const { code, stdout } = await recheck(joined(changed, data));
    expect(code).toBe(1);
    expect(stdout).toMatch(/^DIFFERS/);
    expect(oneLine(stdout)).toContain("it differs at 1 place.");
    expect(stdout).toMatch(/was: .*0\.07/s);
    expect(stdout).toContain("now: ");
    expect(stdout).toContain("do not rely on it");
  });

  test("a wind changed in the files that it carries moves many numbers", async () => {
    const changed = data.replace(/105 mph/, "115 mph");
    expect(changed).not.toBe(data);
    const { code, stdout } = await recheck(joined(shown, changed));
    expect(code).toBe(1);
    expect(stdout).toMatch(/\.\.\. and at \d+ more places/);
  });

  test("words hidden by its style alone", async () => {
    const { code, stdout } = await recheck(
      html.replace("<style>", "<style>.warning{display:none}"),
    );
    expect(code).toBe(1);
    expect(oneLine(stdout)).toContain("It was changed after it was made");
  });

  test("one of another version that gives the same numbers is told so", async () => {
    const older = html.replaceAll("0.1.0", "0.0.9").replace("<style>", "<style>b{color:red}");
    const { code, stdout } = await recheck(older);
    expect(code).toBe(0);
    expect(oneLine(stdout)).toContain("was made by hoopstay 0.0.9");
    expect(oneLine(stdout)).toContain("its look or its drawings are not");
  });

  test("line ends changed by a mail program change nothing", async () => {
    expect((await recheck(html.replaceAll("\n", "\r\n"))).code).toBe(0);
  });

  test("files that are refused today are refused by name and line", async () => {
    const { code, stderr } = await recheck(joined(shown, data.replace(/105 mph/, "105")));
    expect(code).toBe(2);
    expect(stderr).toContain("unit-missing");
    expect(stderr).toMatch(/site file in report\.html:\d+/);
  });
});

describe("no report", () => {
  const head = '<script type="application/json" id="made-from">';
  test.each([
    ["an empty file", ""],
    ["a page of another kind", "<html><body>Wind</body></html>"],
    ["a report cut short", `<p>ratio 0.4</p>${head}{"program":"hoopstay","version":`],
    ["data of another shape", `${head}{"program":"hoopstay","files":null}</script>`],
    ["nothing but beginnings", "<style><h2 id=<".repeat(200_000)],
  ])("%s", async (_, text) => {
    const { code, stdout, stderr } = await recheck(text);
    expect(code).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain("[report-without-inputs]");
  });

  test("a move card", async () => {
    const { code, stderr } = await recheck(await written(["card", ...files], "--to"));
    expect(code).toBe(2);
    expect(oneLine(stderr)).toContain("Cards, ladders and comparisons carry no inputs");
  });

  test("a file that is not there", async () => {
    const { code, stderr } = await run(".", ["recheck", "no-such.html"]);
    expect(code).toBe(2);
    expect(stderr).toContain("[file-unreadable]");
  });
});
