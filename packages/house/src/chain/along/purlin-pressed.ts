import type { Strength, Worksheet } from "@hoopstay/strength";
import type { LoadSet } from "../../review/evaluate.ts";
import { componentCases } from "../component/component-groups.ts";
import { spanMoment, spanReaction } from "../component/component-loads.ts";
import { type LinkRow, plainRow } from "../link.ts";
import { factoredPressure, forceOverStrength, momentOverStrength } from "../superposed.ts";
import { silent } from "../worked-row.ts";
import type { CoverLoad } from "./cover-loads.ts";
import type { PurlinLoad } from "./purlin-load.ts";

/** What is known of a kind of line that the cover presses on. */
interface PressedKind {
  readonly name: string;
  readonly load: PurlinLoad;
  readonly spacing: number;
  readonly strengthsOn: (sheet: Worksheet) => unknown;
}

/** Bending and shear by the cover alone, whatever ends stand. */
export function pressedRows(
  kind: PressedKind,
  covers: ReadonlyMap<LoadSet, CoverLoad>,
  bending: Strength,
  shear: Strength,
): LinkRow[] {
  const { name, load, spacing } = kind;
  const ways = [
    [`bending of the ${name}`, "moment", spanMoment, momentOverStrength, bending],
    [`shear of the ${name}`, "force", spanReaction, forceOverStrength, shear],
  ] as const;
  return [...new Set(covers.values())].flatMap((cover) =>
    componentCases(cover.pressure).flatMap((windCase) =>
      ways.map(([part, measure, of, over, strength]) => {
        const needs = (sheet: Worksheet, q: number, dead: number): number =>
          sheet.work(of, [load.work(sheet, q, dead, cover), spacing]);
        return plainRow(
          {
            link: "ridge-line",
            part,
            place: "near the ends of the house",
            run: "the cover pressing on it",
            windCase,
            measure,
            work: (sheet, q, { method, wind, dead, words }) => {
              kind.strengthsOn(sheet);
              const factored = sheet.work(factoredPressure, [wind, q], { note: words });
              sheet.work(over, [needs(sheet, factored, dead), strength[method]]);
            },
          },
          (q, { wind, dead }) => needs(silent, wind * q, dead),
          strength,
        );
      }),
    ),
  );
}
