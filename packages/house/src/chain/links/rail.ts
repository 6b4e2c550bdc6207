import type { LinkNotChecked, Words } from "@hoopstay/core";
import { derived, formula, measured } from "@hoopstay/core";
import {
  interactionEnvelope,
  interactionWithTorsion,
  smallTorsion,
  torsionInteraction,
} from "@hoopstay/strength";
import { type RailSide, railSides } from "../../rail-pull/case-on-rails.ts";
import { mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { sideHold } from "../hoop/side-hold.ts";
import { type LinkMaker, type LinkRow, ratioRow } from "../link.ts";
import type { RailAction } from "../rail/rail-action.ts";
import { atMost, notHeld, type RailAt, type RailInCase } from "../rail/rail-actions.ts";
import {
  betweenMembers,
  type RailStrength,
  railShares,
  railStrengthOf,
  railStrengths,
  workRailShares,
} from "../rail/rail-shares.ts";
import { steelFindings, steelOfTube } from "../steel.ts";

/** The section along a rail that is asked most. */
function worstSection(
  action: RailAction,
  can: RailStrength,
  method: "ASD" | "LRFD",
): { readonly ratio: number; readonly at: number } {
  let ratio = 0;
  let worst = 0;
  for (let at = 0; at < action.vertical.length; at += 1) {
    const { x, y, v, t } = railShares(action, can, method, at);
    const own = Math.max(v, interactionWithTorsion(0, x, y, v, t));
    if (own > ratio) {
      ratio = own;
      worst = at;
    }
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
  rail: RailInCase,
  side: RailSide,
  can: RailStrength,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const action = rail.exactly(q, combination);
    if (!action) return;
    const { method, words } = combination;
    const { at } = worstSection(action, can, method);
    railStrengths(evaluation.house, sheet);
    const place = rails.places[side][at] as number;
    const note = `${place.toFixed(3)} m from the middle of the house; ${words}`;
    const { x, y, v, t } = workRailShares(sheet, action, can, method, at, note);
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
  const can = railStrengthOf(railStrengths(evaluation.house));
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
        const rail = rails.in(windCase, set, side);
        const ratio = (at: RailAt) => (q: number, combination: LinkCombination) => {
          const action = at(q, combination);
          return action ? worstSection(action, can, combination.method).ratio : notHeld;
        };
        const about = {
          link: "rail",
          part: tied ? "bending up and down and in plan, with torsion" : "bending up and down",
          place: `${side} rail`,
          run: tied
            ? "on its anchors and the ground, between its cross members"
            : "on its anchors and the ground",
          windCase: { ...windCase, sets: new Map([[set, index]]) },
          touches: true,
          atMost: atMost(ratio(rail.nearly)),
          work: railWork(context, rail, side, can),
        } as const;
        rows.push(ratioRow(about, ratio(rail.exactly)));
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
