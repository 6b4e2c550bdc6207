import type { LinkNotChecked } from "@hoopstay/core";
import { bareTubeLoad } from "@hoopstay/load";
import { memberSection, memberStrengths, type Worksheet } from "@hoopstay/strength";
import type { ChainContext } from "../context.ts";
import { designDemand, unrated } from "../demand.ts";
import type { LinkRow, LinkRows } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { windRow } from "../worked-row.ts";
import type { Braced } from "./braced-bays.ts";
import type { AlongPush } from "./end-pushes.ts";
import { braceForce, pushOfOneEnd } from "./hoop-along-formulas.ts";
import { greatestCases, rowCaseOf, wallCases } from "./wall-cases.ts";
import { workWallTop } from "./wall-work.ts";

const onWall = ({ front, back }: AlongPush): number => Math.max(Math.abs(front), Math.abs(back));

/** Braces of the end bays: each end holds its own wall, and its part of what blows on the hoops. */
export function braceRows(context: ChainContext, { bars, acting, pullOnly }: Braced): LinkRows {
  const { house, shell } = context.evaluation;
  const { length } = bars;
  const allHoops = shell.hoopLine * shell.hoopCount;
  const strengthsOn = (sheet?: Worksheet) =>
    memberStrengths(
      memberSection(bars.tube),
      steelOfTube(bars),
      { bucklingX: length, bucklingY: length, lateral: length, shear: length, torsion: length },
      null,
      sheet,
    );
  const { tension, compression, findings } = strengthsOn();
  const cases = greatestCases(
    wallCases(context),
    (push) => onWall(push) / 2 + (Math.abs(push.line) * allHoops) / 4,
  );
  const rowsOf = (part: string, resistance: { ASD: number; LRFD: number }): LinkRow[] =>
    cases.map(({ windCase }) => {
      const { push } = windCase;
      return windRow(
        {
          link: "ridge-line",
          part,
          place: "in the end bays",
          run: `${acting} ${acting === 1 ? "brace acts" : "braces act"} at each end`,
          windCase: rowCaseOf(windCase),
          measure: "force",
        },
        (sheet, q) => {
          const top = workWallTop(sheet, q, onWall(push), shell.endArea, push.line);
          const line = sheet.work(bareTubeLoad, [q, 1, Math.abs(push.line)]);
          const end = sheet.work(pushOfOneEnd, [top, line, allHoops]);
          return sheet.work(braceForce, [end, acting, length, house.spacing]);
        },
        resistance,
        (sheet) => strengthsOn(sheet),
      );
    });
  const rows = rowsOf("end-bay brace pulled", tension);
  const notChecked: LinkNotChecked[] = [
    {
      link: "ridge-line",
      words: "what the end-bay braces are made fast with, and the foot below",
      why: "not entered; each end of a brace must hold this",
      demand: designDemand(context, rowsOf("", unrated)),
    },
  ];
  if (!pullOnly) {
    if (compression.covered) rows.push(...rowsOf("end-bay brace pushed", compression));
    else {
      const why = `${compression.reason}. ${compression.mend}`;
      notChecked.push({ link: "ridge-line", words: "end-bay braces pushed", why, demand: null });
    }
  }
  return { rows, notChecked, findings: findings.map((finding) => [`End-bay braces: ${finding}.`]) };
}
