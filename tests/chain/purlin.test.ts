import { hoopLine } from "@hoopstay/frame";
import { type House, linkCombinations } from "@hoopstay/house";
import { arcHeightAt, arcPointAt } from "@hoopstay/load";
import { describe, expect, test } from "vitest";
import { outOfPlane } from "../../packages/house/src/chain/along/out-of-plane.ts";
import { purlinLines } from "../../packages/house/src/chain/along/purlin-lines.ts";
import { endBraces, fitted, fittedWith } from "./fitted-house.ts";
import { demandOf, evaluation, linkOf, ratioOf } from "./made-links.ts";

const { shell } = evaluation;
const { purlins, ridge } = fitted.links;
if (!purlins || !ridge) throw new Error("the example has purlins and a ridge");

const heavy = linkCombinations.find(({ weight }) => weight === "high");

/** Rows along the ridge of the example with braced end bays. */
const rowsWith = (change: Partial<House["links"]>) =>
  linkOf(fittedWith({ endBraces, ...change }), "ridge-line").rows;

describe("half a ring in plan, held at both ends, pushed at its middle", () => {
  const radius = 2.7;
  const line = hoopLine([
    { kind: "arc", centre: { x: 0, z: 0 }, radius, fromAngle: Math.PI, toAngle: 0 },
  ]);
  const half = line.length / 2;
  test.each([0.2, 0.77, 5])("M = P R / pi at the crown, G J / E I %d: least work", (stiffness) => {
    const { at, foot } = outOfPlane(line, [{ s: half, force: 0.5 }], 1, stiffness);
    expect(at(half).bending).toBeCloseTo(radius / Math.PI, 4);
    expect(at(half).torsion).toBeCloseTo(0, 6);
    expect(foot.shear).toBeCloseTo(0.5, 12);
    expect(foot.tipping).toBeCloseTo(radius / 2, 9);
    expect(foot.torque).toBeCloseTo(radius / 2 - radius / Math.PI, 4);
  });
});

describe("purlins and ridge", () => {
  test("shares of an end wall add up to all of it, left as right", () => {
    for (const lines of [0, 1, 2, 3, 4, 6]) {
      const house = fittedWith({ purlins: { ...purlins, lines } });
      const shares = purlinLines(house, shell).map(({ wallShare }) => wallShare);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      shares.forEach((share, at) => {
        expect(share).toBeCloseTo(shares[shares.length - 1 - at] ?? 0, 12);
      });
    }
  });

  test("the share of a line is the wall from half way to half way: the midpoint rule", () => {
    const lines = purlinLines(fitted, shell);
    const across = lines.map(({ archShare }) => {
      const { x } = arcPointAt(shell.arc, 2 * Math.min(archShare, 1 - archShare));
      return archShare < 0.5 ? -x : x;
    });
    lines.slice(1, -1).forEach(({ wallShare }, at) => {
      const [before, own, after] = across.slice(at, at + 3) as [number, number, number];
      const [from, to] = [(before + own) / 2, (own + after) / 2];
      const strips = 2000;
      const area = Array.from({ length: strips }, (_, strip) => {
        const x = from + ((strip + 0.5) * (to - from)) / strips;
        return ((shell.springing + arcHeightAt(shell.arc, x)) * (to - from)) / strips;
      }).reduce((sum, one) => sum + one, 0);
      expect(wallShare * shell.endArea).toBeCloseTo(area, 6);
    });
  });

  test("a ridge alone takes half of a free wall, 1.3 A / 2, and to braced bays what hoops catch", () => {
    const clampWith = (change: Partial<House["links"]>): number =>
      demandOf(rowsWith({ purlins: null, ...change }), "clamp of the ridge on an end hoop");
    const wall = (1.3 * shell.endArea) / 2;
    const hoops = (1.2 * shell.hoopDiameter * shell.hoopLine * shell.hoopCount) / 4;
    expect(clampWith({ endBraces: null })).toBeCloseTo(wall, 9);
    expect(clampWith({})).toBeCloseTo(wall + hoops, 9);
  });

  test("with both ends open what the hoops catch goes along the purlins to braced bays", () => {
    const open = new Set(
      evaluation.states
        .map(({ set }) => set)
        .filter(({ covering, ends }) => covering !== "bare" && !ends.front && !ends.back),
    );
    const inOpen = (rows: ReturnType<typeof rowsWith>) =>
      rows.filter(
        ({ part, windCase }) =>
          part === "purlins, one bay" && [...windCase.sets.keys()].some((set) => open.has(set)),
      );
    expect(open.size).toBeGreaterThan(0);
    expect(inOpen(rowsWith({})).length).toBeGreaterThan(0);
    expect(inOpen(rowsWith({ endBraces: null }))).toEqual([]);
  });

  test("weight bends purlins in no wind: M = g s^2 / 8, V = g s / 2", () => {
    const parts = ["bending", "shear"].map((what) => {
      const row = rowsWith({}).find(({ part }) => part === `${what} of the purlins`);
      if (!row || !heavy) throw new Error(`no ${what}`);
      return row.asked(0, heavy).demand;
    });
    const [moment = 0, force = 0] = parts;
    expect(force).toBeGreaterThan(0);
    expect(moment / force).toBeCloseTo(fitted.spacing / 4, 12);
    const own = evaluation.takeOff.items.find(({ what }) => what === "purlins")?.unitHigh ?? 0;
    expect((2 * force) / fitted.spacing).toBeGreaterThan(own);
  });

  test("more lines leave less to each", () => {
    const forces = [1, 3, 5].map((lines) => {
      const rows = rowsWith({ ridge: null, purlins: { ...purlins, lines } });
      return demandOf(rows, "clamp of the purlins on an end hoop");
    });
    expect(forces[1]).toBeLessThan(forces[0] as number);
    expect(forces[2]).toBeLessThan(forces[1] as number);
  });

  test("a thicker wall is never weaker, and cover that presses on a purlin never helps it", () => {
    const ratioWith = (change: Partial<NonNullable<House["links"]["purlins"]>>): number =>
      ratioOf(rowsWith({ purlins: { ...purlins, ...change } }), "purlins, one bay");
    const { tube } = purlins;
    if (tube.kind !== "round") throw new Error("round purlins");
    const ratios = [1, 1.3, 1.7].map((times) =>
      ratioWith({ tube: { ...tube, wall: times * tube.wall } }),
    );
    expect(ratios[1]).toBeLessThan(ratios[0] as number);
    expect(ratios[2]).toBeLessThan(ratios[1] as number);
    expect(ratioWith({ underCover: false })).toBeLessThan(ratios[0] as number);
  });

  test("wind from the front asks of clamps what wind from the back asks: the ends are alike", () => {
    const clamps = rowsWith({}).filter(({ part }) => part.startsWith("clamp"));
    const most = (direction: string): number =>
      demandOf(
        clamps.filter(({ windCase }) => windCase.direction === direction),
        "clamp of the purlins on an end hoop",
      );
    expect(most("+y")).toBeCloseTo(most("-y"), 12);
    expect(most("+x")).toBeCloseTo(most("-x"), 12);
  });
});
