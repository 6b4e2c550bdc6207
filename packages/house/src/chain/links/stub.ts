import {
  interaction,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  type Worksheet,
  workInteraction,
} from "@hoopstay/strength";
import type { SteelTube } from "../../model/steel-tube.ts";
import { footAtRail } from "../hoop/foot-forces.ts";
import { type FootPart, footRows } from "../hoop/foot-rows.ts";
import { cantileverFactor } from "../hoop/stub-length.ts";
import type { LinkMaker } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { forceOverStrength } from "../superposed.ts";

const strengths = (stub: SteelTube, free: number, sheet?: Worksheet): MemberStrengths =>
  memberStrengths(
    memberSection(stub.tube),
    steelOfTube(stub),
    { bucklingX: free, bucklingY: free, lateral: free, shear: free, torsion: free },
    null,
    sheet,
  );

/** The stub alone as a cantilever from the rail up to the bolts; the hoop around it is not counted. */
export const stubLink: LinkMaker = (context) => {
  const { stub } = context.evaluation.house.links;
  const free = cantileverFactor.value * context.runs.outline.hinge;
  const { tension, compression, momentX, shearX } = strengths(stub, free);
  const uncovered = [tension, compression, momentX, shearX].find((one) => !one.covered);
  if (uncovered && !uncovered.covered) {
    const why = `${uncovered.reason}. ${uncovered.mend}`;
    return {
      rows: [],
      notChecked: [{ link: "stub", words: "the stubs", why, demand: null }],
      findings: [],
    };
  }
  if (!tension.covered || !compression.covered || !momentX.covered || !shearX.covered) {
    throw new Error("a strength of the stub is missing");
  }
  const parts: FootPart[] = [
    {
      part: "bending of the stub above the rail",
      measure: "ratio",
      demand: ({ uplift, couple }, method) => {
        const along = uplift > 0 ? tension : compression;
        return interaction(uplift, along[method], couple, momentX[method], 0, momentX[method]);
      },
      resistance: { ASD: 1, LRFD: 1 },
      work: (sheet, { uplift, couple }, method) => {
        strengths(stub, free, sheet);
        const along = uplift > 0 ? tension : compression;
        const bending = [couple, momentX[method]] as const;
        workInteraction([uplift, along[method]], bending, [0, momentX[method]], sheet);
      },
    },
    {
      part: "shear of the stub",
      measure: "force",
      demand: ({ thrust }) => thrust,
      resistance: shearX,
      work: (sheet, { thrust }, method) => {
        strengths(stub, free, sheet);
        sheet.work(forceOverStrength, [thrust, shearX[method]]);
      },
    },
  ];
  return { rows: footRows(context, "stub", footAtRail, parts), notChecked: [], findings: [] };
};
