import type { LinkNotChecked, Measure, Words } from "@hoopstay/core";
import { measured } from "@hoopstay/core";
import { designWallOf } from "@hoopstay/section";
import {
  boltResultant,
  type ConnectionNote,
  contactForce,
  coupleShear,
  governing,
  memberSection,
  memberStrengths,
  type SleeveStrength,
  sleeveBoltForce,
  sleeveContactForce,
  sleeveStrength,
  stubFit,
  type Wall,
  type Worksheet,
} from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import { designCombinations } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { atBolts, type FootReading, hingeStations } from "../hoop/foot-forces.ts";
import { type FootPart, footRows } from "../hoop/foot-rows.ts";
import type { LinkMaker } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { forceOverStrength } from "../superposed.ts";

/** A round tube's wall to compute with, and its steel. */
export function wallOf({ tube, steel }: SteelTube): Wall {
  if (tube.kind !== "round" && tube.kind !== "rectangular") throw new Error("no tube");
  const { yieldStrength, tensileStrength } = steelOfTube({ tube, steel });
  return { wall: designWallOf(tube), yieldStrength, tensileStrength };
}

const outsideOf = ({ tube }: SteelTube): number => (tube.kind === "round" ? tube.outside : 0);

/** The sleeve joint of a hoop's foot; null where no bolt is entered. */
export function footSleeve({ links }: House, sheet?: Worksheet) {
  const { hoop, stub } = links;
  const { bolts } = stub;
  if (!bolts || hoop.tube.kind !== "round" || stub.tube.kind !== "round") return null;
  const sleeved = (of: SteelTube) => ({
    ...wallOf(of),
    outside: outsideOf(of),
    endDistance: bolts.edge,
  });
  return sleeveStrength(
    {
      hoop: sleeved(hoop),
      stub: sleeved(stub),
      overlap: stub.length - stub.shoulder,
      bolt: {
        grade: bolts.grade,
        diameter: bolts.diameter,
        threads: bolts.threadsClear ? "excluded" : "in the shear plane",
      },
      count: bolts.count,
      spacing: bolts.count > 1 ? bolts.spacing : null,
      holeDiameter: null,
      washers: bolts.washers,
    },
    sheet,
  );
}

/** Play between the two tubes of the sleeve: inside of the outer less outside of the inner, m. */
function playOf({ links: { hoop, stub } }: House): number {
  if (hoop.tube.kind !== "round" || stub.tube.kind !== "round") return Number.NaN;
  const [outer, inner] =
    hoop.tube.outside >= stub.tube.outside ? [hoop.tube, stub.tube] : [stub.tube, hoop.tube];
  return outer.outside - 2 * outer.wall - inner.outside;
}

/** Whether the straight stub goes into the bent hoop, and into its tube at all. */
function fitFindings(
  { house }: ChainContext["evaluation"],
  { radius, springSlope }: ChainContext["runs"]["outline"],
): Words[] {
  const play = playOf(house);
  if (play < 0) {
    return [
      [
        "Hoop and stub do not go into each other: the inner tube is thicker than the outer one's bore by ",
        measured(-play, "length"),
        ".",
      ],
    ];
  }
  const { stub } = house.links;
  const overlap = stub.length - stub.shoulder;
  if (!(overlap > 0) || overlap > radius) return [];
  const { fits, offset, legNeeded } = stubFit(overlap, house.leg, radius, springSlope, play);
  if (fits) return [];
  return [
    [
      "The straight stub does not go into the bent hoop: over its length the hoop leaves it by ",
      measured(offset, "length"),
      ", the tubes have ",
      measured(play, "length"),
      " of play. A straight leg of ",
      measured(legNeeded, "length"),
      " would do.",
    ],
  ];
}

export const noted = (link: string, notes: readonly ConnectionNote[]): Words[] =>
  notes.map(
    ({ words, value, measure }): Words =>
      value === null
        ? [`${link}: ${words}.`]
        : [`${link}: ${words}, `, measured(value, measure as Measure), "."],
  );

/** Uplift of the foot that asks most of a fixing nobody told of, N. */
function greatestUplift(context: ChainContext): number {
  const parts: FootPart[] = [
    {
      part: "uplift",
      measure: "force",
      demand: ({ uplift }) => Math.max(0, uplift),
      resistance: { ASD: 1, LRFD: 1 },
      work: () => undefined,
    },
  ];
  const { evaluation } = context;
  const rows = footRows(context, "bolts", boltForces(context), parts);
  const [combination] = designCombinations(evaluation.site.combination);
  return rows.reduce(
    (most, row) =>
      combination ? Math.max(most, row.asked(evaluation.pressure, combination).demand) : most,
    0,
  );
}

/** The foot at the middle of its bolts: pull along the tube, shear, moment. */
export const boltForces = (context: ChainContext): FootReading => {
  const [left, right] = hingeStations(context);
  return {
    words: "at the middle of the bolts",
    at: (answer, side, d, w, into) => atBolts(answer, side === "left" ? left : right, d, w, into),
  };
};

function sleeveParts(
  house: House,
  sleeve: SleeveStrength,
  tubeShear: FootPart["resistance"],
): FootPart[] {
  return [
    {
      part: governing(sleeve.perBolt, "ASD").name,
      measure: "force",
      demand: ({ uplift, thrust, couple }) => sleeveBoltForce(uplift, thrust, couple, sleeve),
      resistance: sleeve.perBolt,
      work: (sheet, { uplift, thrust, couple }, method) => {
        footSleeve(house, sheet);
        const { count, spacing } = sleeve;
        const by = spacing === null ? 0 : sheet.work(coupleShear, [couple, count, spacing]);
        const force = sheet.work(boltResultant, [uplift, thrust, count, by]);
        sheet.work(forceOverStrength, [force, sleeve.perBolt[method]]);
      },
    },
    {
      part: governing(sleeve.tubes, "ASD").name,
      measure: "force",
      demand: ({ uplift }) => Math.max(0, uplift),
      resistance: sleeve.tubes,
      work: (sheet, { uplift }, method) => {
        footSleeve(house, sheet);
        sheet.work(forceOverStrength, [Math.max(0, uplift), sleeve.tubes[method]]);
      },
    },
    {
      part: "shear of the tubes where one presses on the other",
      measure: "force",
      demand: ({ thrust, couple }) => sleeveContactForce(thrust, couple, sleeve.overlap),
      resistance: tubeShear,
      work: (sheet, { thrust, couple }, method) => {
        const { overlap } = sleeve;
        const force =
          6 * couple > thrust * overlap
            ? sheet.work(contactForce, [couple, thrust, overlap])
            : thrust;
        sheet.work(forceOverStrength, [force, tubeShear[method]]);
      },
    },
  ];
}

/** Available shear of the weaker of hoop and stub, N. */
export function weakerShear({ links }: House, length: number): FootPart["resistance"] {
  const of = (piece: SteelTube) => {
    const { shearX } = memberStrengths(memberSection(piece.tube), steelOfTube(piece), {
      bucklingX: length,
      bucklingY: length,
      lateral: length,
      shear: length,
      torsion: length,
    });
    return shearX.covered ? shearX : { ASD: 0, LRFD: 0 };
  };
  const [hoop, stub] = [of(links.hoop), of(links.stub)];
  return { ASD: Math.min(hoop.ASD, stub.ASD), LRFD: Math.min(hoop.LRFD, stub.LRFD) };
}

/** Hoop on stub: bolts right through both tubes, and the sleeve's contact. */
export const boltsLink: LinkMaker = (context) => {
  const { evaluation, runs } = context;
  const { house } = evaluation;
  const findings = fitFindings(evaluation, runs.outline);
  const sleeve = footSleeve(house);
  const missing = (why: string): LinkNotChecked => ({
    link: "bolts",
    words: "hoop to stub",
    why,
    demand: measured(greatestUplift(context), "force"),
  });
  if (!sleeve) {
    const why =
      house.links.stub.bolts === null
        ? "no bolts are entered (stubs.bolts); the uplift of one foot is what they must hold"
        : "hoop and stub are computed as round tubes only";
    return { rows: [], notChecked: [missing(why)], findings };
  }
  if (!sleeve.covered) {
    return { rows: [], notChecked: [missing(`${sleeve.reason}. ${sleeve.mend}`)], findings };
  }
  const parts = sleeveParts(house, sleeve, weakerShear(house, sleeve.overlap));
  return {
    rows: footRows(context, "bolts", boltForces(context), parts),
    notChecked: sleeve.notChecked.map(({ words }) => ({
      link: "bolts",
      words: "hoop to stub",
      why: words,
      demand: null,
    })),
    findings: [...findings, ...noted("Bolts", [...sleeve.assumed, ...sleeve.findings])],
  };
};
