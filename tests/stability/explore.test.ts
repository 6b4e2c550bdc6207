import fc from "fast-check";
import { test } from "vitest";
import { actions, between, combination, heldHouse, pressure, solve, unknownSlope } from "./arbitrary-holding.ts";
test("slanted unknown verdicts", () => {
  const turn = between(-Math.PI, Math.PI);
  let flips=0, fin=0, n=0, worst=0, worst1=0, lim=0, inf=0;
  fc.assert(fc.property(heldHouse({ anchors: "slanted", slope: unknownSlope }), actions, combination, pressure, turn, (house, table, by, q, at) => {
        const w = solve(house, table, by, q).slide;
        const angle = house.slope?.angle ?? 0;
        const known = solve({ ...house, slope: { angle, downhill: [Math.cos(at), Math.sin(at)] as const } }, table, by, q).slide;
        n++;
        const a = known.byRatio.ratio, b = w.byRatio.ratio;
        if (a > 1+1e-9 && b <= 1) { flips++; console.log("FLIP", a, b, w.byLimit.limit/q, known.byLimit.limit/q); }
        if (b<=1+1e-9 && w.byLimit.limit<q*(1-1e-6)) { fin++; if (fin<4) console.log("ratio says holds", b, w.byLimit.limit/q); }
        if (a===Infinity && b<Infinity) inf++;
        if (Number.isFinite(a) && a/b-1>worst) { worst=a/b-1; console.log("W",a,b); }
        if (a<1 && a/b-1>worst1) { worst1=a/b-1; console.log("W1",a,b); }
        if (known.byLimit.limit < w.byLimit.limit*(1-1e-7)) { lim++; console.log("LIM", known.byLimit.limit/q, w.byLimit.limit/q); }
  }), { seed: 8, numRuns: 4000 });
  console.log({ n, flips, fin, inf, worst, worst1, lim });
}, 600000);
