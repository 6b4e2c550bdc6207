import {
  type Chapter,
  constant,
  derived,
  formula,
  judged,
  type LinkNotChecked,
} from "@hoopstay/core";
import {
  type ConnectionStrength,
  governing,
  type SpliceStrength,
  spliceStrength,
  steelOf,
  type Worksheet,
} from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import type { SplicePlates } from "../../model/link-parts.ts";
import { type RailSide, railSides } from "../../rail-pull/case-on-rails.ts";
import { mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { type LinkMaker, type LinkRow, ratioRow } from "../link.ts";
import { nearestPlace } from "../rail/nearest-place.ts";
import type { RailAction } from "../rail/rail-action.ts";
import { atMost, notHeld, type RailAt } from "../rail/rail-actions.ts";
import { steelFindings } from "../steel.ts";
import { found } from "../superposed.ts";
import { noted, wallOf } from "./bolts.ts";

const spliceShare = formula({
  id: "splice-share",
  symbol: "u",
  name: "share of the splice's strength used by both moments",
  measure: "ratio",
  arguments: [
    ["M_x", "moment up and down", "moment"],
    ["M_cx", "strength against it", "moment"],
    ["M_y", "moment in plan", "moment"],
    ["M_cy", "strength against it", "moment"],
  ],
  expression: "M_x / M_cx + M_y / M_cy",
  citation: derived("both moments together, as in H1-1 without axial force"),
  evaluate: (Mx, Mcx, My, Mcy) => Mx / Mcx + My / Mcy,
});

const weldedGap = constant(
  "splice-gap",
  "L_g",
  "plate across the joint that no weld holds",
  0.0127,
  "length",
  judged("plates welded along both edges up to the joint; a gap of 1/2 in, common practice"),
);

const unweldedShare = constant(
  "splice-free-share",
  "r_g",
  "free part of a plate whose fixing is not told",
  0.5,
  "ratio",
  judged("half the plate is taken to be held by nothing; cautious"),
);

/** Plates of one joint: those told shared by the joints told, or one on each side face. */
function platesAtJoint(splices: SplicePlates, told: number): number {
  const { places } = splices;
  return places && places.length > 0 ? told / (2 * places.length) : 2;
}

/** The splice of one joint; null where the rail is no rectangular tube. */
function spliceOf(
  { rail, links }: House,
  splices: SplicePlates,
  told: number,
  sheet?: Worksheet,
): SpliceStrength | string {
  if (rail.tube.kind !== "rectangular") return "computed for square and rectangular rails only";
  const count = platesAtJoint(splices, told);
  if (!Number.isInteger(count)) return "the plates do not share out evenly over the joints told";
  const { width, thickness, length, weld } = splices;
  if (width > rail.tube.depth + 1e-9) return "the plates are wider than the rail's side";
  const strength = spliceStrength(
    {
      width,
      thickness,
      steel: steelOf({ standard: "other", ...splices.steel, form: "solid" }),
      count,
      faces: "sides",
      rail: { ...wallOf(links.rail), width: rail.tube.width, depth: rail.tube.depth },
      freeLength: weld ? weldedGap.value : length * unweldedShare.value,
      weld: weld && { leg: weld.leg, electrode: weld.electrode, lineLength: length / 2 },
      bolts: null,
    },
    sheet,
  );
  return strength.covered ? strength : `${strength.reason}. ${strength.mend}`;
}

/** Places of the rail that its splices may have to carry: those told, or all. */
function placesOf({ rails }: ChainContext, { places }: SplicePlates, side: RailSide): number[] {
  const all = rails.places[side];
  if (!places) return all.map((_, at) => at);
  return places.map((y) => nearestPlace(all, y));
}

const shareAt = (
  vertical: number,
  plan: number,
  strength: SpliceStrength,
  method: "ASD" | "LRFD",
): number => spliceShare.evaluate(vertical, strength.vertical[method], plan, strength.plan[method]);

/** Splice plates of the rails against the rail's moments at their place. */
export const splicesLink: LinkMaker = (context) => {
  const { evaluation, cases } = context;
  const { splices } = evaluation.house.links;
  if (!splices) return { rows: [], notChecked: [], findings: [] };
  const words = "the rail splices";
  const { count: told } = splices;
  const strength = spliceOf(evaluation.house, splices, told);
  if (typeof strength === "string") {
    const notChecked: LinkNotChecked[] = [{ link: "splices", words, why: strength, demand: null }];
    return { rows: [], notChecked, findings: [] };
  }
  const rows: LinkRow[] = [];
  for (const windCase of cases) {
    if (!mainForm(windCase)) continue;
    for (const [set, index] of windCase.sets) {
      for (const side of railSides) {
        const rail = context.rails.in(windCase, set, side);
        const worst = worstSplice(context, side, splices, strength);
        const ratio = (at: RailAt) => (q: number, combination: LinkCombination) => {
          const found = worst(at(q, combination), combination);
          if (!found) return notHeld;
          return shareAt(found.vertical, found.plan, strength, combination.method);
        };
        rows.push(
          ratioRow(
            {
              link: "splices",
              part: partOf(strength),
              place: splices.places ? `${side} rail, worst splice` : `${side} rail, worst place`,
              run: splices.places
                ? "plates on both side faces"
                : "plates on both side faces, place not told: the worst along the rail",
              windCase: { ...windCase, sets: new Map([[set, index]]) },
              touches: true,
              atMost: atMost(ratio(rail.nearly)),
              work: (sheet, q, combination) => {
                const found = worst(rail.exactly(q, combination), combination);
                spliceWork(sheet, context, splices, strength, found, combination);
              },
            },
            ratio(rail.exactly),
          ),
        );
      }
    }
  }
  const notes = [...strength.vertical.notChecked, ...strength.plan.notChecked];
  const unique = [...new Map(notes.map((one) => [one.id, one])).values()];
  return {
    rows,
    notChecked: [
      ...unique.map(
        ({ words: why }): LinkNotChecked => ({ link: "splices", words, why, demand: null }),
      ),
      ...leftOut,
    ],
    findings: [
      ...steelFindings(
        "The splice plates",
        steelOf({ standard: "other", ...splices.steel, form: "solid" }),
      ),
      ...noted("Splices", [...strength.vertical.assumed, ...strength.vertical.findings]),
    ],
  };
};

const leftOut: readonly LinkNotChecked[] = [
  {
    link: "splices",
    words: "shear and the rail's twist across a splice",
    why: "plates on the side faces are rated for both moments only; side plates alone hold little against twist",
    demand: null,
  },
];

const partOf = ({ vertical, plan }: SpliceStrength): string => {
  const names = [vertical, plan].map((one: ConnectionStrength) => governing(one, "ASD").name);
  return [...new Set(names)].join(", ");
};

interface SpliceMoments {
  readonly vertical: number;
  readonly plan: number;
  readonly y: number;
}

function worstSplice(
  context: ChainContext,
  side: RailSide,
  splices: SplicePlates,
  strength: SpliceStrength,
) {
  const places = placesOf(context, splices, side);
  return (action: RailAction | null, combination: LinkCombination): SpliceMoments | null => {
    if (!action) return null;
    let [worst, most]: [SpliceMoments | null, number] = [null, -1];
    for (const place of places) {
      const vertical = action.vertical[place] as number;
      const plan = action.plan[place] as number;
      const share = shareAt(vertical, plan, strength, combination.method);
      const y = context.rails.places[side][place] as number;
      if (share > most) [worst, most] = [{ vertical, plan, y }, share];
    }
    return worst;
  };
}

function spliceWork(
  sheet: Chapter,
  { evaluation }: ChainContext,
  splices: SplicePlates,
  strength: SpliceStrength,
  moments: SpliceMoments | null,
  { method, words }: LinkCombination,
): void {
  if (!moments) return;
  spliceOf(evaluation.house, splices, splices.count, sheet);
  const note = `${moments.y.toFixed(3)} m from the middle of the house; ${words}`;
  const by = "rail on its anchors and the ground, and with all hoops in plan: the greatest in size";
  const one = (symbol: string, name: string, value: number) =>
    sheet.work(found(symbol, name, value, "moment", by), [], { note });
  const vertical = one("M_x", "moment up and down", moments.vertical);
  const plan = one("M_y", "moment in plan", moments.plan);
  sheet.work(spliceShare, [vertical, strength.vertical[method], plan, strength.plan[method]]);
}
