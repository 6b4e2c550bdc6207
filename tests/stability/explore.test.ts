import fc from "fast-check";
import { test } from "vitest";
import { lrfd, allOutcomes } from "@hoopstay/stability";
import { actions, between, combination, heldHouse, pressure, solve, unknownSlope, termsOf } from "./arbitrary-holding.ts";
test("one", () => {
  const house:any = {"slope":{"angle":0.01,"downhill":null},"friction":0.01,"bearing":{"halfSpan":1.5,"front":3,"back":3,"railWidth":0.08,"allowable":30000},"weights":[{"W":1000,"x":0,"y":0,"z":0.3,"name":"low"},{"W":2000,"x":0,"y":0,"z":0.3,"name":"high"}],"anchors":[]};
  const table = {"count":1,"components":Float64Array.from([0,0,9.5625,0,0,0,0])};
  for (const d of [null,[1,0]]) console.log(allOutcomes(termsOf({...house, slope:{angle:.01,downhill:d}}, lrfd, 94.11294121568613), table, 0).filter(o=>o.check==="slide"));
});
test("slanted unknown verdicts", () => {
  const turn = between(-Math.PI, Math.PI);
  let flips=0, fin=0, n=0, worst=0, worst1=0;
  fc.assert(fc.property(heldHouse({ anchors: "slanted", slope: unknownSlope }), actions, combination, pressure, turn, (house, table, by, q, at) => {
        const w = solve(house, table, by, q).slide;
        const angle = house.slope?.angle ?? 0;
        const known = solve({ ...house, slope: { angle, downhill: [Math.cos(at), Math.sin(at)] as const } }, table, by, q).slide;
        n++;
        const a = known.byRatio.ratio, b = w.byRatio.ratio;
        if (a > 1+1e-9 && b <= 1) { flips++; console.log("FLIP", a, b, w.byLimit.limit/q, known.byLimit.limit/q); }
        if (b<=1+1e-9 && w.byLimit.limit<q*(1-1e-6)) { fin++; if (fin<4) console.log("ratio says holds", b, w.byLimit.limit/q); }
        if (Number.isFinite(a) && a/b-1>worst) { worst=a/b-1; console.log("W",a,b); }
        if (a<1 && a/b-1>worst1) { worst1=a/b-1; console.log("W1",a,b); }
  }), { seed: 8, numRuns: 5000 });
  console.log({ n, flips, fin, worst, worst1 });
}, 600000);
