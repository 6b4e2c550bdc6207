import { catalogue, findSize, nearestSizes, tubeOfSize } from "@hoopstay/section";
import { describe, expect, test } from "vitest";
import { plainName } from "../../packages/section/src/catalogue/plain-name.ts";

/** Sizes of the American and European lists, from memory, one or more of each side or diameter. */
const rolled = `
  HSS2X1X3/16 HSS2X1-1/2X3/16 HSS2-1/4X2-1/4X1/4 HSS2-1/2X2-1/2X5/16 HSS2-1/2X1X1/8
  HSS2-1/2X1-1/2X1/4 HSS2-1/2X2X1/4 HSS3X3X3/8 HSS3X1X1/8 HSS3X1-1/2X3/16 HSS3X2X5/16
  HSS3X2-1/2X1/4 HSS3-1/2X3-1/2X3/8 HSS3-1/2X1-1/2X1/4 HSS3-1/2X2-1/2X3/8 HSS4X1-1/2X5/16
  HSS4X2X3/8 HSS4X3X3/8 HSS4X4X1/2 HSS5X2X1/4 HSS5X3X1/4 HSS5X5X3/8 HSS6X2X1/4 HSS6X3X1/4
  HSS6X4X3/8 HSS6X6X3/8 HSS1.900X0.188 HSS2.500X0.250 HSS2.875X0.203 HSS3.000X0.250
  CFSHS50x50x2.0 CFSHS60x60x5.0 CFSHS80x80x5.0 CFSHS100x100x6.0
  CFCHS33.7x2.6 CFCHS42.4x2.6 CFCHS48.3x2.6`
  .trim()
  .split(/\s+/);

/** Inches as the trade writes them: `2-1/2`, `3/16`, `0.188`. */
function inches(text: string): number {
  const [whole = "", fraction] = text.includes("/") ? text.split(/-(?=\d+\/)/) : [text, "0/1"];
  const [over = 0, under = 1] = (fraction ?? whole).split("/").map(Number);
  return 0.0254 * ((fraction === undefined ? 0 : Number(whole)) + over / under);
}

describe("sizes by their names", () => {
  test.each(rolled)("%s is listed", (name) => {
    expect(findSize(name)?.name).toBe(name);
  });

  test("every HSS has the dimensions its name says", () => {
    const sizes = catalogue.filter(({ name }) => name.startsWith("HSS"));
    for (const { name, shape } of sizes) {
      const [first = 0, ...rest] = name.slice(3).split("X").map(inches);
      const wall = rest.at(-1);
      if (shape.kind === "rectangular") {
        expect([shape.depth, shape.width, shape.wall], name).toEqual([first, rest[0], wall]);
      } else {
        expect(shape, name).toMatchObject({ kind: "round", outside: first, wall });
      }
    }
    expect(sizes.length).toBeGreaterThan(100);
  });

  test("a European size without its process is cold formed, never hot finished", () => {
    expect(findSize("CHS42.4x3.0")?.name).toBe("CFCHS42.4x3.0");
    expect(findSize("CHS42.4x3.2")).toBeUndefined();
    expect(findSize("SHS50x50x3.2")).toBeUndefined();
  });

  test("fence tube is found by its true diameter too", () => {
    expect(findSize("OD 1.315 x 18ga BWG")?.name).toBe("Fence 1-3/8 OD 1.315 x 18ga BWG");
  });

  test("a size is galvanized or not as asked; an angle takes no notice", () => {
    const tube = findSize("HSS2X2X1/8");
    const angle = findSize("L2X2X1/8");
    if (!tube || !angle) throw new Error("not listed");
    expect(tubeOfSize(tube, true)).toEqual({ ...tube.shape, galvanized: true });
    expect(tubeOfSize(tube, false)).toEqual({ ...tube.shape, galvanized: false });
    expect(tubeOfSize(angle, true)).toEqual(angle.shape);
  });

  test("sixty characters are read, one more is no designation", () => {
    expect(findSize("HSS4X3X3/16".padEnd(60))?.name).toBe("HSS4X3X3/16");
    expect(findSize("HSS4X3X3/16".padEnd(61))).toBeUndefined();
  });

  test("as many near names as asked for, by the first sixty characters", () => {
    const typed = "HSS4X3X3/16".padEnd(60);
    expect(nearestSizes(typed, 1).map(({ name }) => name)).toEqual(["HSS4X3X3/16"]);
    expect(nearestSizes(typed, 3)).toHaveLength(3);
    const beyond = nearestSizes(`${typed}Fence 1-5/8 x 16ga BWG`, catalogue.length);
    expect(beyond).toEqual(nearestSizes(typed, catalogue.length));
  });

  test.each([
    [" hss 1.90 × .120 ", "hss1.9x0.12"],
    ["HSS 2  1/2 x 2 11/16", "hss2-1/2x2-11/16"],
    ["HSS 2 1 / 2", "hss2-1/2"],
    ["HSS 2 1/ 2", "hss2-1/2"],
    ["Pipe 2. STD", "pipe2std"],
    ["OD 1.50 x 2.00", "od1.5x2"],
  ])("%s is plainly %s", (typed, plain) => {
    expect(plainName(typed)).toBe(plain);
  });
});

describe("the nearest names, by the definition of their distance", () => {
  test.each([
    "hss4x3x3/61",
    "hss4x3x3/1",
    "hss34x3x3/16",
    "shs 80x08x4",
    "cfchs84.3x3",
    "x2l2x1/8",
    "2x2x1/8",
    "pip2estd",
    "fnece2x16gabwg",
    "fence 1-3/8 x 16ga",
    "",
  ])("%j", (typed) => {
    const plain = plainName(typed);
    const distances = catalogue.map((size) =>
      Math.min(...[size.name, ...size.aliases].map((name) => distance(plain, plainName(name)))),
    );
    const expected = catalogue
      .map((size, place) => ({ name: size.name, place, distance: distances[place] ?? 0 }))
      .sort((one, other) => one.distance - other.distance || one.place - other.place)
      .map(({ name }) => name);
    expect(nearestSizes(typed, catalogue.length).map(({ name }) => name)).toEqual(expected);
  });
});

/** Least cost of edits: 1 for one too many, a wrong one or two exchanged, 0.1 for one left out. */
function distance(from: string, to: string): number {
  const known = new Map<number, number>();
  const between = (taken: number, made: number): number => {
    if (taken === 0) return made * 0.1;
    if (made === 0) return taken;
    const key = 1000 * taken + made;
    const before = known.get(key);
    if (before !== undefined) return before;
    const same = from[taken - 1] === to[made - 1];
    const ways = [
      between(taken - 1, made) + 1,
      between(taken, made - 1) + 0.1,
      between(taken - 1, made - 1) + (same ? 0 : 1),
    ];
    const exchanged =
      from.slice(taken - 2, taken) === `${to[made - 1]}${to[made - 2]}` && taken > 1 && made > 1;
    if (exchanged) ways.push(between(taken - 2, made - 2) + 1);
    const least = Math.min(...ways);
    known.set(key, least);
    return least;
  };
  return between(from.length, to.length);
}
