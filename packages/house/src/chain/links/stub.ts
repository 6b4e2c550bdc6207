import {
  type HolePlace,
  interaction,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  type NotCovered,
  type Strength,
  type Worksheet,
  workInteraction,
} from "@hoopstay/strength";
import type { FootBolts, Stub } from "../../model/link-parts.ts";
import { footAtRail } from "../hoop/foot-forces.ts";
import { type FootPart, footRows } from "../hoop/foot-rows.ts";
import { holedTube, inHoopPlane } from "../hoop/holed-tube.ts";
import { cantileverFactor } from "../hoop/stub-length.ts";
import type { LinkMaker } from "../link.ts";
import { steelFindings, steelOfTube } from "../steel.ts";
import { forceOverStrength } from "../superposed.ts";

/** The stub by itself; at its bolts' holes where they weaken it, under the whole moment at the rail. */
export function stubStrengths(
  stub: Stub,
  free: number,
  place: (bolts: FootBolts) => HolePlace,
  sheet?: Worksheet,
): MemberStrengths {
  const whole = memberStrengths(
    memberSection(stub.tube),
    steelOfTube(stub),
    { bucklingX: free, bucklingY: free, lateral: free, shear: free, torsion: free },
    null,
    sheet,
  );
  const holed = holedTube(stub, stub.bolts, place, sheet);
  if (!holed || "covered" in holed) return whole;
  return {
    ...whole,
    tension: lower(whole.tension, holed.tension),
    momentX: lower(whole.momentX, holed.moment),
  };
}

/** The lower of two strengths, method by method. */
function lower<One extends Strength | NotCovered>(one: One, other: Strength): One {
  if (!one.covered) return one;
  return { ...one, ASD: Math.min(one.ASD, other.ASD), LRFD: Math.min(one.LRFD, other.LRFD) };
}

/** The stub alone as a cantilever from the rail up to the bolts; the hoop around it is not counted. */
export const stubLink: LinkMaker = (context) => {
  const { stub } = context.evaluation.house.links;
  const free = cantileverFactor.value * context.runs.outline.hinge;
  const { tension, compression, momentX, shearX } = stubStrengths(stub, free, inHoopPlane);
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
        stubStrengths(stub, free, inHoopPlane, sheet);
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
        stubStrengths(stub, free, inHoopPlane, sheet);
        sheet.work(forceOverStrength, [thrust, shearX[method]]);
      },
    },
  ];
  return {
    rows: footRows(context, "stub", footAtRail, parts),
    notChecked: [],
    findings: steelFindings("The stubs", steelOfTube(stub)),
  };
};
