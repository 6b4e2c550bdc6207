import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { buildOnce, inFolder, run, soundHouse, soundSite } from "../cli/program.ts";
import { sha256, told } from "./told.ts";

beforeAll(buildOnce);

const shown = /inputs ([0-9a-f]{8,64})/;

test("stale inputs printed: a report carries the digest of both texts, and every row as typed", async () => {
  await inFolder(async (folder) => {
    const write = (site: string): void => {
      writeFileSync(join(folder, "house.yaml"), soundHouse);
      writeFileSync(join(folder, "site.yaml"), site);
    };
    const report = async (): Promise<string> => {
      await run(folder, ["check", "house.yaml", "site.yaml", "--report", "out.html"]);
      return readFileSync(join(folder, "out.html"), "utf8");
    };
    write(soundSite);
    const first = await report();
    const digest = shown.exec(first.replace(/<[^>]*>/g, ""))?.[1] ?? "none";
    expect(sha256(`${soundHouse}\0${soundSite}`).startsWith(digest)).toBe(true);

    const newer = soundSite.replace("105 mph", "106 mph");
    write(newer);
    const second = await report();
    const other = shown.exec(second.replace(/<[^>]*>/g, ""))?.[1] ?? "none";
    expect(sha256(`${soundHouse}\0${newer}`).startsWith(other)).toBe(true);
    expect(other).not.toBe(digest);
    expect(second).toContain("106 mph");
    expect(second).not.toContain(">105 mph<");
  });
});

test("stale inputs printed: a refused file says that nothing was written, so an old report is known as old", async () => {
  await inFolder(async (folder) => {
    writeFileSync(join(folder, "house.yaml"), soundHouse);
    writeFileSync(join(folder, "site.yaml"), soundSite.replace("105 mph", "105"));
    writeFileSync(join(folder, "out.html"), "yesterday");
    const args = ["check", "house.yaml", "site.yaml", "--report", "out.html"];
    const { code, stderr, stdout } = await run(folder, args);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("Nothing was written.");
    expect(readFileSync(join(folder, "out.html"), "utf8")).toBe("yesterday");
  });
});

test("stale inputs printed: a blank more is another digest", () => {
  const digest = told().digest;
  expect(told({ site: [["105 mph", "105  mph"]] }).digest).not.toBe(digest);
});
