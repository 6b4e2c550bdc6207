import type { LinkNotChecked, Words } from "@hoopstay/core";
import { derived, formula, measured } from "@hoopstay/core";
import {
  interactionEnvelope,
  interactionWithTorsion,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  smallTorsion,
  torsionInteraction,
  type Worksheet,
} from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import { type RailSide, railSides } from "../../rail-pull/case-on-rails.ts";
import type { LoadSet } from "../../review/evaluate.ts";
import { type ChainCase, mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { sideHold } from "../hoop/side-hold.ts";
import { type LinkMaker, type LinkRow, ratioRow } from "../link.ts";
import { notHeld, type RailAction } from "../rail/rail-actions.ts";
import { steelFindings, steelOfTube } from "../steel.ts";
import { forceOverStrength, found, momentOverStrength } from "../superposed.ts";

/** Longest stretch of rail between cross members, or all of it, m. */
function betweenMembers({ rail, links }: House): number {
  const cross = links.crossMembers?.places ?? [];
  const ends = [-rail.back, ...cross, rail.front];
  return Math.max(...ends.slice(1).map((y, at) => y - (ends[at] as number)));
}

export function railStrengths(house: House, sheet?: Worksheet): MemberStrengths {
  const free = betweenMembers(house);
  return memberStrengths(
    memberSection(house.rail.tube),
    steelOfTube(house.links.rail),
    { bucklingX: free, bucklingY: free, lateral: free, shear: free, torsion: free },
    null,
    sheet,
  );
}

type Covered = Readonly<
  Record<
    "momentX" | "momentY" | "shear" | "torsion",
    { readonly ASD: number; readonly LRFD: number }
  >
>;

/** The strengths a rail is checked with, or why there are none. */
function coveredOf({
  momentX,
  momentY,
  shearX,
  shearY,
  torsion,
}: MemberStrengths): Covered | string {
  for (const one of [momentX, momentY, shearX, shearY, torsion]) {
    if (!one.covered) return `${one.reason}. ${one.mend}`;
  }
  if (!momentX.covered || !momentY.covered || !shearX.covered || !shearY.covered) return "";
  if (!torsion.covered) return "";
  const shear = {
    ASD: Math.min(shearX.ASD, shearY.ASD),
    LRFD: Math.min(shearX.LRFD, shearY.LRFD),
  };
  return { momentX, momentY, shear, torsion };
}

/** Place of the shear's share. */
const shearShare = 3;

/** Shares of one section: both moments, shear and torsion, each over its own strength. */
const sharesAt = (action: RailAction, can: Covered, method: "ASD" | "LRFD", at: number) =>
  [
    0,
    (action.vertical[at] as number) / can.momentX[method],
    (action.plan[at] as number) / can.momentY[method],
    (action.shear[at] as number) / can.shear[method],
    (action.torque[at] as number) / can.torsion[method],
  ] as const;

/** The section along a rail that is asked most. */
function worstSection(
  action: RailAction,
  can: Covered,
  method: "ASD" | "LRFD",
): { readonly ratio: number; readonly at: number } {
  let [ratio, worst] = [0, 0];
  for (let at = 0; at < action.vertical.length; at += 1) {
    const shares = sharesAt(action, can, method, at);
    const own = Math.max(shares[shearShare], interactionWithTorsion(...shares));
    if (own > ratio) [ratio, worst] = [own, at];
  }
  return { ratio, at: worst };
}

const greaterShare = formula({
  id: "greater-share",
  symbol: "u",
  name: "the greater: all together, or shear alone",
  measure: "ratio",
  arguments: [
    ["u_M", "moments, torsion and shear together", "ratio"],
    ["v", "shear alone", "ratio"],
  ],
  expression: "max(u_M, v)",
  citation: derived("AISC 360-22 H3.2 leaves small torsion out, chapter G stands by itself"),
  evaluate: (together, shear) => Math.max(together, shear),
});

/** Strengths of the rail, its moments where it is asked most, and their shares together. */
function railWork(
  { evaluation, rails }: ChainContext,
  windCase: ChainCase,
  set: LoadSet,
  side: RailSide,
  can: Covered,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const action = rails.at(windCase, set, side, q, combination);
    if (!action) return;
    const { method, words } = combination;
    const { at } = worstSection(action, can, method);
    railStrengths(evaluation.house, sheet);
    const place = rails.places[side][at] as number;
    const note = `${place.toFixed(3)} m from the middle of the house; ${words}`;
    const by =
      "rail on its anchors and the ground, and with all hoops in plan: the greatest in size";
    const one = (symbol: string, name: string, value: number, measure: "moment" | "force") =>
      sheet.work(found(symbol, name, value, measure, by), [], { note });
    const up = one("M_x", "moment up and down", action.vertical[at] as number, "moment");
    const plan = one("M_y", "moment in plan", action.plan[at] as number, "moment");
    const shear = one("V", "shear, both ways together", action.shear[at] as number, "force");
    const torque = one("T", "torque", action.torque[at] as number, "moment");
    const x = sheet.work(momentOverStrength, [up, can.momentX[method]], { symbol: "m_x" });
    const y = sheet.work(momentOverStrength, [plan, can.momentY[method]], { symbol: "m_y" });
    const t = sheet.work(momentOverStrength, [torque, can.torsion[method]], { symbol: "t" });
    const v = sheet.work(forceOverStrength, [shear, can.shear[method]], { symbol: "v" });
    const together =
      t <= smallTorsion
        ? sheet.work(interactionEnvelope, [0, x, y])
        : sheet.work(torsionInteraction, [0, x, y, v, t]);
    sheet.work(greaterShare, [together, v]);
  };
}

/** Bending, shear and torsion of the rails in every state and direction. */
export const railLink: LinkMaker = (context) => {
  const { evaluation, cases, rails } = context;
  const can = coveredOf(railStrengths(evaluation.house));
  if (typeof can === "string") {
    return {
      rows: [],
      notChecked: [{ link: "rail", words: "the rails", why: can, demand: null }],
      findings: [],
    };
  }
  const tied = context.runs.railed.length > 0;
  const rows: LinkRow[] = [];
  for (const windCase of cases) {
    if (!mainForm(windCase)) continue;
    for (const [set, index] of windCase.sets) {
      for (const side of railSides) {
        const about = {
          link: "rail",
          part: tied ? "bending up and down and in plan, with torsion" : "bending up and down",
          place: `${side} rail`,
          run: tied
            ? "on its anchors and the ground, between its cross members"
            : "on its anchors and the ground",
          windCase: { ...windCase, sets: new Map([[set, index]]) },
          touches: true,
          work: railWork(context, windCase, set, side, can),
        } as const;
        rows.push(
          ratioRow(about, (q: number, combination: LinkCombination) => {
            const action = rails.at(windCase, set, side, q, combination);
            return action ? worstSection(action, can, combination.method).ratio : notHeld;
          }),
        );
      }
    }
  }
  return {
    rows,
    notChecked: tied ? [] : untied,
    findings: [
      ...steelFindings("The rails", steelOfTube(evaluation.house.links.rail)),
      ...tiedOnlyAtEnds(context),
      ...noSideHold(context),
    ],
  };
};

const untied: readonly LinkNotChecked[] = [
  {
    link: "rail",
    words: "the rails in plan and twisted by the hoops",
    why: "no cross members are entered: one rail takes the side push, and nothing holds either against twist. The rail's wall and the splices are rated without it",
    demand: null,
  },
];

/** Bare rails tied to each other only far apart bend many times more in plan. */
function tiedOnlyAtEnds({ evaluation }: ChainContext): Words[] {
  const { house } = evaluation;
  if (!house.links.crossMembers) {
    return [
      ["No cross members tie the rails: one foot of every hoop is computed as free to spread."],
    ];
  }
  const free = betweenMembers(house);
  return free > house.lines.span
    ? [
        [
          "The rails are tied to each other only every ",
          measured(free, "length"),
          ": between cross members the hoops bend them in plan.",
        ],
      ]
    : [];
}

function noSideHold({ evaluation }: ChainContext): Words[] {
  const held = (["+x", "-x"] as const).every(
    (direction) => sideHold(evaluation.house, direction).anchors !== null,
  );
  return held
    ? []
    : [
        [
          "Against wind from at least one side fewer than two anchors on the rails pull back: there the ground is taken to hold both rails evenly.",
        ],
      ];
}
