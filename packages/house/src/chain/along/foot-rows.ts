import type { ChainContext } from "../context.ts";
import { grouped } from "../grouped.ts";
import type { FootForces } from "../hoop/foot-forces.ts";
import { footWords, workForces } from "../hoop/foot-rows.ts";
import { type GoverningFoot, governingFeet } from "../hoop/governing-feet.ts";
import { factoredDead } from "../hoop/hoop-answers.ts";
import { type LinkRow, ratioRow } from "../link.ts";
import { whileTied } from "../links/ties.ts";
import { factoredPressure } from "../superposed.ts";
import { AlongSheet } from "./along-work.ts";
import { type AlongPart, footParts } from "./foot-parts.ts";
import type { PushedHoop } from "./pushed-hoops.ts";

/** Stubs, bolts and welds of hoops that are pushed along the house, where they are asked most. */
export function alongFootRows(context: ChainContext, pushed: readonly PushedHoop[]): LinkRow[] {
  const byReading = grouped(footParts(context), ({ reading }) => reading);
  return [...byReading].flatMap(([reading, parts]) =>
    governingFeet(context, pushed, reading, ({ windCase }) => windCase.direction).flatMap((foot) =>
      parts.map((part) => rowOf(context, foot, part)),
    ),
  );
}

function rowOf(
  context: ChainContext,
  { pushed, side, sets }: GoverningFoot<PushedHoop>,
  { part, reading, ratio, work }: AlongPart,
): LinkRow {
  const { hoopPlaces, evaluation } = context;
  const { answer, demand, sharing } = pushed;
  const { run, windCase, hoop } = answer;
  const { railed } = run;
  const foot = { answer, side, y: hoopPlaces[hoop] as number };
  const forces: FootForces = { uplift: 0, thrust: 0, couple: 0 };
  const along = { shear: 0, tipping: 0, torque: 0, atBolts: 0 };
  const row = ratioRow(
    {
      link: "ridge-line",
      part,
      place: footWords(foot, hoopPlaces.length, railed),
      run: `${sharing.words}; ${run.words}`,
      windCase: { ...windCase, sets },
      work: (sheet, q, combination) => {
        const worked = workForces(sheet, context, foot, reading, q, combination);
        const factored = sheet.work(factoredPressure, [combination.wind, q]);
        const { endArea } = evaluation.shell;
        const onSheet = new AlongSheet(sheet, factored, demand, sharing.hoops, endArea);
        work(sheet, worked, onSheet, combination.method);
      },
    },
    (q, combination) => {
      const d = factoredDead(context.dead, answer.windCase, combination);
      const w = combination.wind * q;
      along.shear = w * demand.shear;
      along.tipping = w * demand.tipping;
      along.torque = w * demand.torque;
      along.atBolts = w * demand.atBolts;
      return ratio(reading.at(answer, side, d, w, forces), along, combination.method);
    },
  );
  return whileTied(context, answer, row);
}
