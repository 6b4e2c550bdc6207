import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import process from "node:process";
import { beforeAll, describe, expect, test } from "vitest";
import { buildOnce, inFolder, run, soundHouse, soundSite } from "../cli/program.ts";
import { keysOf, reordered } from "../cli/same-house.ts";

type Env = Readonly<Record<string, string>>;

/** Commands, and the pages they write, for one house at one site: quick ones, and all. */
const quick = [
  ["check", "HOUSE", "SITE", "--report", "check.html"],
  ["check", "HOUSE", "SITE", "--json"],
  ["pulls", "HOUSE", "SITE"],
  ["page", "--to", "page.html"],
];
const all = [
  ...quick,
  ["hold", "HOUSE", "SITE", "--report", "hold.html"],
  ["hold", "HOUSE", "SITE", "--json", "--units", "si"],
  ["card", "HOUSE", "SITE", "--to", "card.html"],
  ["ladder", "HOUSE", "SITE", "--gust", "45 mph", "--to", "ladder.html"],
  ["first", "HOUSE", "SITE", "--units", "si"],
  ["compare", "HOUSE", "SITE", "--with", "hoops.spacing=4 ft", "--report", "compare.html"],
];
const texts = all.filter((args) => args.every((arg) => !arg.endsWith(".html"))).slice(0, 3);

interface Made {
  readonly commands?: readonly (readonly string[])[];
  readonly house?: string;
  readonly site?: string;
  /** How the files are named, seen from the folder the command runs in. */
  readonly name?: (file: string, from: string) => string;
  readonly from?: string;
  readonly env?: Env;
}

/** Two at a time: the machine may be small. */
async function made({
  commands = quick,
  house = soundHouse,
  site = soundSite,
  name = (file, from) => relative(from, file),
  from = ".",
  env = {},
}: Made): Promise<Record<string, string>> {
  return inFolder(async (folder) => {
    const cwd = join(folder, from);
    mkdirSync(cwd, { recursive: true });
    const [houseFile, siteFile] = [join(folder, "house.yaml"), join(folder, "site.yaml")];
    writeFileSync(houseFile, house);
    writeFileSync(siteFile, site);
    const names: Record<string, string> = {
      HOUSE: name(houseFile, cwd),
      SITE: name(siteFile, cwd),
    };
    const told: Record<string, string> = {};
    const work = async (args: readonly string[]): Promise<void> => {
      const ran = await run(
        cwd,
        args.map((arg) => names[arg] ?? arg),
        env,
      );
      told[args.join(" ")] = `${ran.code} ${ran.stderr}${ran.stdout}`;
    };
    const waiting = [...commands];
    const worker = async (): Promise<void> => {
      for (let next = waiting.shift(); next; next = waiting.shift()) await work(next);
    };
    await Promise.all([worker(), worker()]);
    for (const file of commands.flat().filter((arg) => arg.endsWith(".html")))
      told[file] = readFileSync(join(cwd, file), "utf8");
    return told;
  });
}

/** Equal byte by byte; told by name, so that a difference does not print a whole page. */
function expectSame(one: Record<string, string>, other: Record<string, string>): void {
  expect(Object.keys(other).filter((key) => one[key] !== other[key])).toEqual([]);
}

/** A clock of another year and dice that always fall alike, put in before the program starts. */
const otherClock = `
const Real = Date;
globalThis.Date = class extends Real {
  constructor(...given) { super(...(given.length ? given : [Real.UTC(2031, 11, 31, 23, 59, 59)])); }
  static now() { return Real.UTC(2031, 11, 31, 23, 59, 59); }
};
Math.random = () => 0.125;
`;

describe("the same files give the same bytes", () => {
  let usual: Record<string, string>;
  beforeAll(async () => {
    buildOnce();
    usual = await made({ commands: all });
    for (const [what, text] of Object.entries(usual)) expect([what, text]).not.toEqual([what, ""]);
  }, 300_000);

  test.each([
    { LC_ALL: "de_DE.UTF-8", TZ: "Asia/Kolkata", COLUMNS: "40" },
    { LC_ALL: "tr_TR.UTF-8", TZ: "Pacific/Apia", NO_COLOR: "1", TERM: "dumb" },
    { LC_ALL: "C", LANG: "C", TZ: "UTC", NODE_ICU_DATA: "" },
  ])(
    "under $LC_ALL in $TZ",
    async (env) => {
      expectSame(usual, await made({ env }));
    },
    300_000,
  );

  test("every command, with all of it at once: language, zone, clock, dice, folder, whole paths", async () => {
    await inFolder(async (folder) => {
      const clock = join(folder, "clock.cjs");
      writeFileSync(clock, otherClock);
      const env = {
        LC_ALL: "ar_EG.UTF-8",
        TZ: "America/St_Johns",
        FORCE_COLOR: "1",
        NODE_OPTIONS: `--require ${clock}`,
      };
      const name = (file: string): string => file;
      expectSame(usual, await made({ commands: all, env, from: "reports/of today", name }));
    });
  }, 300_000);

  test("but for their digest with the keys in another order", async () => {
    const [house, site] = [reordered(soundHouse), reordered(soundSite)];
    expect(keysOf(house)).not.toEqual(keysOf(soundHouse));
    const other = await made({ commands: texts, house, site });
    const digests = /"digest":"[0-9a-f]{64}"/;
    for (const [key, text] of Object.entries(other))
      expect(text.replace(digests, "")).toBe(usual[key]?.replace(digests, ""));
  }, 300_000);
});

test("the surroundings do differ: Node reads them", () => {
  const seen = (env: Env): string =>
    execFileSync(
      process.execPath,
      ["-p", "(1234.5).toLocaleString() + new Date(0).getTimezoneOffset()"],
      { encoding: "utf8", env: { ...process.env, ...env } },
    ).trim();
  expect(seen({ LC_ALL: "de_DE.UTF-8", TZ: "Asia/Kolkata" })).toBe("1.234,5-330");
  expect(seen({ LC_ALL: "ar_EG.UTF-8", TZ: "America/St_Johns" })).toBe("١٬٢٣٤٫٥210");
  expect(seen({ LC_ALL: "C", TZ: "UTC" })).toBe("1,234.50");
});

describe("the date is the one typed in the site file", () => {
  test.each(["2026-11-30", "30 November 2026, before midnight", "1999-12-31T23:59:60Z"])(
    "%s is printed as typed, in a zone where it is another day",
    async (date) => {
      await inFolder(async (folder) => {
        writeFileSync(join(folder, "house.yaml"), soundHouse);
        writeFileSync(join(folder, "site.yaml"), soundSite.replace("2026-11-12", date));
        const args = ["check", "house.yaml", "site.yaml", "--report", "out.html"];
        const { code } = await run(folder, args, { TZ: "Pacific/Apia" });
        expect(code).toBe(1);
        expect(readFileSync(join(folder, "out.html"), "utf8")).toContain(`>${date}<`);
      });
    },
  );
});
