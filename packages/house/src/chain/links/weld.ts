import { measured } from "@hoopstay/core";
import { circleWeldForce, filletWeldStrength, governing, type Worksheet } from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import { designCombinations } from "../combination.ts";
import { footAtRail } from "../hoop/foot-forces.ts";
import { type FootPart, footRows } from "../hoop/foot-rows.ts";
import type { LinkMaker } from "../link.ts";
import { lineForceOverStrength } from "../superposed.ts";
import { noted, wallOf } from "./bolts.ts";

/** Strength of the weld all round the stub, N/m; null where no weld is entered. */
export function footWeld({ links }: House, sheet?: Worksheet) {
  const { stub, rail } = links;
  if (!stub.weld || stub.tube.kind !== "round") return null;
  const { leg, electrode } = stub.weld;
  return filletWeldStrength(
    { leg, electrode, length: Math.PI * stub.tube.outside },
    [
      { id: "stub", name: "the stub", ...wallOf(stub) },
      { id: "rail", name: "the rail", ...wallOf(rail) },
    ],
    sheet,
  );
}

/** The weld between stub and rail, and the walls beside it. */
export const weldLink: LinkMaker = (context) => {
  const { evaluation } = context;
  const { stub } = evaluation.house.links;
  const outside = stub.tube.kind === "round" ? stub.tube.outside : 0;
  const strength = footWeld(evaluation.house);
  const part = (name: string, resistance: FootPart["resistance"]): FootPart => ({
    part: name,
    measure: "force-per-length",
    demand: ({ uplift, thrust, couple }) =>
      circleWeldForce(outside, Math.abs(uplift), thrust, couple, 0),
    resistance,
    work: (sheet, { uplift, thrust, couple }, method) => {
      footWeld(evaluation.house, sheet);
      const force = circleWeldForce(outside, Math.abs(uplift), thrust, couple, 0, sheet);
      sheet.work(lineForceOverStrength, [force, resistance[method]]);
    },
  });
  if (!strength) {
    if (outside === 0) {
      const why = "the weld is computed round a round stub only";
      return {
        rows: [],
        notChecked: [{ link: "weld", words: "stub to rail", why, demand: null }],
        findings: [],
      };
    }
    const rows = footRows(context, "weld", footAtRail, [part("weld", { ASD: 1, LRFD: 1 })]);
    const demand = Math.max(
      0,
      ...rows.flatMap((row) =>
        designCombinations(evaluation.site.combination).map(
          (one) => row.asked(evaluation.pressure, one).demand,
        ),
      ),
    );
    const why = "no weld is entered (stubs.weld); this much per length it must hold";
    return {
      rows: [],
      notChecked: [
        {
          link: "weld",
          words: "stub to rail",
          why,
          demand: measured(demand, "force-per-length"),
        },
      ],
      findings: [],
    };
  }
  return {
    rows: footRows(context, "weld", footAtRail, [part(governing(strength, "ASD").name, strength)]),
    notChecked: strength.notChecked.map(({ words }) => ({
      link: "weld",
      words: "stub to rail",
      why: words,
      demand: null,
    })),
    findings: noted("Weld", [...strength.assumed, ...strength.findings]),
  };
};
