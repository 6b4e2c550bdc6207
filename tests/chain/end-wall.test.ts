import { describe, expect, test } from "vitest";
import { worstBetween } from "../../packages/house/src/chain/along/between-lines.ts";
import { endBraces, fitted, fittedWith, house } from "./fitted-house.ts";
import { fittedContext as context, demandOf, linkOf, ratioOf } from "./made-links.ts";

const { shell } = context.evaluation;
const { rows } = linkOf(fitted, "end-wall");
const foot = 0.3048;
const middle = "bending of the stud in the middle";

describe("studs of an end wall", () => {
  test("simple span under the standard's lines, drawn outward: M = p s l^2 / 8", () => {
    const [length, spacing] = [shell.crown, 0.61];
    const area = length * Math.max(spacing, length / 3);
    const share = Math.log10(area / foot ** 2 / 10) / Math.log10(50);
    const lined = 1.1 - 0.3 * share + 0.55;
    const free = 1.3;
    const moment = (Math.max(lined, free) * spacing * length ** 2) / 8;
    expect(demandOf(rows, middle)).toBeCloseTo(moment, 9);
  });

  test("half of a stud's load hangs on each end: V = 4 M / l", () => {
    const force = demandOf(rows, "fixing of the stud in the middle");
    expect(force / demandOf(rows, middle)).toBeCloseTo(4 / shell.crown, 9);
  });

  test("a stud beside the door carries half of the door", () => {
    const beside = demandOf(rows, "fixing of the stud beside the door");
    expect(beside).toBeGreaterThan(demandOf(rows, "fixing of the stud in the middle"));
    const doors = { front: [], back: [] };
    const without = linkOf(fittedWith({ doors }), "end-wall");
    expect(without.rows.some(({ part }) => part.includes("beside the door"))).toBe(false);
  });

  test("a wider stud is never weaker, studs farther apart never stronger", () => {
    const ratioWith = (change: { readonly width?: number; readonly spacing?: number }): number => {
      const stud = fitted.links.studs.front;
      if (!stud) throw new Error("a stud");
      const other = { ...stud, ...change };
      return ratioOf(
        linkOf(fittedWith({ studs: { front: other, back: other } }), "end-wall").rows,
        middle,
      );
    };
    const own = ratioOf(rows, middle);
    expect(ratioWith({ width: 0.089 })).toBeGreaterThan(own);
    expect(ratioWith({ spacing: 0.8 })).toBeGreaterThan(own);
  });

  test("without studs the wind on the wall is told, and the halves of it at hoop and ground", () => {
    const { notChecked } = linkOf(house, "end-wall");
    const of = (words: string): number =>
      notChecked.find((one) => one.words.startsWith(words))?.demand?.value ?? Number.NaN;
    const whole = of("studs or frame of the end walls");
    expect(of("an end wall made fast to its hoop")).toBeCloseTo(whole / 2, 9);
    expect(of("an end wall made fast at the ground")).toBeCloseTo(whole / 2, 9);
    for (const { words, demand } of notChecked) expect(demand?.value, words).toBeGreaterThan(0);
  });
});

describe("end hoops that their wall leans on", () => {
  const part = "end hoop bent by its end wall";

  test("only end hoops, in every direction of the wind", () => {
    const some = rows.filter((row) => row.part === part);
    const places = new Set(some.map(({ place }) => place));
    const count = context.hoopPlaces.length;
    const ends = ["the end hoops", `hoop 1 of ${count}`, `hoop ${count} of ${count}`];
    for (const place of places) expect(ends.some((end) => place.startsWith(end))).toBe(true);
    expect(new Set(some.map(({ windCase }) => windCase.direction)).size).toBe(4);
  });

  test("a braced end bay never asks more of them, nor one line more of purlins", () => {
    const own = ratioOf(rows, part);
    const braced = linkOf(fittedWith({ endBraces }), "end-wall");
    expect(ratioOf(braced.rows, part)).toBeLessThan(own);
    const lines = [1, 3, 5, 8].map((count) => worstBetween(context, count));
    lines.slice(1).forEach((between, at) => {
      const size = (one: typeof between): number => (one ? one.width * one.length ** 2 : 0);
      expect(size(between)).toBeLessThan(size(lines[at] ?? null));
    });
    expect(worstBetween(context, 0)).toBeNull();
  });

  test("without purlins the end hoop carries its wall from foot to foot", () => {
    const alone = linkOf(fittedWith({ purlins: null, ridge: null, endBraces }), "end-wall");
    const some = alone.rows.filter((row) => row.part === part);
    expect(some.length).toBeGreaterThan(0);
    for (const { run } of some) expect(run).toContain("from foot to foot");
  });
});
