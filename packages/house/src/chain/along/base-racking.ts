import { type Measured, measured, type Words } from "@hoopstay/core";
import { type Drag, type FrameSection, type Racked, rackBase } from "@hoopstay/frame";
import { cornerRadii } from "@hoopstay/section";
import {
  filletWeldStrength,
  interaction,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  rectangleWeldForce,
} from "@hoopstay/strength";
import { towSummary } from "../../hold-down/tow.ts";
import type { House } from "../../model/house-model.ts";
import type { CrossMembers } from "../../model/link-parts.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import type { ChainContext } from "../context.ts";
import { wallOf } from "../links/bolts.ts";
import { railStrengths } from "../rail/rail-shares.ts";
import { steelOfTube } from "../steel.ts";
import { rackedBase } from "./racked-base.ts";

function strengthsOver(of: SteelTube, free: number): MemberStrengths {
  const lengths = { bucklingX: free, bucklingY: free, lateral: free, shear: free, torsion: free };
  return memberStrengths(memberSection(of.tube), steelOfTube(of), lengths);
}

/** Greatest share of a member's ASD strength, bent in plan with thrust or pull. */
function shareOf(
  { tension, compression, momentY }: MemberStrengths,
  sections: readonly FrameSection[],
): number | null {
  if (!compression.covered || !momentY.covered) return null;
  return sections.reduce((most, { axial, moment }) => {
    const along = (axial > 0 ? tension : compression).ASD;
    return Math.max(most, interaction(axial, along, 0, momentY.ASD, moment, momentY.ASD));
  }, 0);
}

/** Share of the weld's ASD strength at the ends of the cross members; null without a weld. */
function weldShare(
  { links }: House,
  cross: CrossMembers,
  members: readonly (readonly FrameSection[])[],
): number | null {
  const { tube, weld } = cross;
  if (!weld || tube.kind !== "rectangular") return null;
  const { ASD } = filletWeldStrength(
    { leg: weld.leg, electrode: weld.electrode, length: 2 * (tube.width + tube.depth) },
    [
      { id: "cross", name: "the cross member", ...wallOf(cross) },
      { id: "rail", name: "the rail", ...wallOf(links.rail) },
    ],
  );
  const corner = cornerRadii(tube.convention, tube.wall).outside * tube.wall;
  const none = { momentX: 0, shearY: 0, torque: 0 };
  const ends = members.flatMap((parts) => [parts[0], parts.at(-1)]);
  return ends.reduce((most, end) => {
    if (!end) return most;
    const forces = { axial: Math.abs(end.axial), shearX: Math.abs(end.shear), ...none };
    const momentY = Math.abs(end.moment);
    const force = rectangleWeldForce(tube.width, tube.depth, corner, { ...forces, momentY });
    return Math.max(most, force / ASD);
  }, 0);
}

/** What each part of the base uses of its strength, in words; loads as they are, ASD. */
function sharesInWords(
  house: House,
  cross: CrossMembers,
  ways: readonly Racked[],
): {
  readonly words: string;
  readonly holds: boolean;
  /** Whether every part was checked. */
  readonly whole: boolean;
  readonly moment: Measured;
} {
  const { cornerBraces } = house.links;
  const member = strengthsOver(cross, house.lines.span);
  const brace = cornerBraces && strengthsOver(cornerBraces, cornerBraces.length);
  const worst = (of: (way: Racked) => number | null): number | null =>
    ways.map(of).reduce((a, b) => (a === null || b === null ? null : Math.max(a, b)));
  const shares = [
    ["rails", worst(({ left, right }) => shareOf(railStrengths(house), [...left, ...right]))],
    ["cross members", worst(({ crossMembers }) => shareOf(member, crossMembers.flat()))],
    ["their welds", worst(({ crossMembers }) => weldShare(house, cross, crossMembers))],
    [
      "corner braces",
      worst(({ braces }) => {
        if (!brace?.compression.covered || braces.length === 0) return null;
        const { tension, compression } = brace;
        return Math.max(...braces.map((N) => Math.abs(N) / (N > 0 ? tension : compression).ASD));
      }),
    ],
  ] as const;
  const told = shares.filter(([part]) => part !== "corner braces" || cornerBraces);
  const ends = ways.flatMap(({ crossMembers }) =>
    crossMembers.flatMap((parts) => [parts[0]?.moment ?? 0, parts.at(-1)?.moment ?? 0]),
  );
  return {
    words: told
      .map(([part, share]) => `${part} ${share === null ? "not checked" : share.toFixed(2)}`)
      .join(", "),
    holds: told.every(([, share]) => share === null || share <= 1),
    whole: told.every(([, share]) => share !== null),
    moment: measured(Math.max(...ends.map(Math.abs)), "moment"),
  };
}

/**
 * The base while it is dragged by one front corner, and while a rear corner is held fast: no wind
 * in it. Friction goes with the pull; a held corner takes what is left of the strongest pull over
 * the least friction.
 */
export function baseRacking({ evaluation }: ChainContext): Words[] {
  const { house } = evaluation;
  const cross = house.links.crossMembers;
  if (!cross) {
    return [
      ["Racking of the base while it is dragged is not checked: no cross members tie the rails."],
    ];
  }
  const { loads, available } = towSummary(evaluation).summary;
  const starting = Math.max(...loads.map((load) => load.starting.high));
  const running = Math.min(...loads.map((load) => load.running.low));
  const strongest = Math.max(starting, available?.high ?? 0);
  const base = rackedBase(house, cross);
  const told = (start: Words, drag: Drag): Words => {
    const racked = rackBase(base, drag);
    if (racked.outcome !== "held") return [...start, ": could not be computed."];
    const { words, holds, whole, moment } = sharesInWords(house, cross, racked.ways);
    const carries = whole ? "the base carries it" : "as far as checked the base carries it";
    const verdict = holds ? carries : "the base is too weak for it";
    return [
      ...start,
      `: ${verdict}. Shares of strength: ${words}; at a cross member's end `,
      moment,
      ".",
    ];
  };
  const findings = [
    told(["Dragged by one front corner with ", measured(starting, "force")], {
      pull: { left: starting, right: 0 },
      friction: starting,
      held: "left",
    }),
    told(
      [
        "Dragged with ",
        measured(strongest, "force"),
        " while one rear corner is held and takes ",
        measured(strongest - running, "force"),
      ],
      { pull: { left: strongest / 2, right: strongest / 2 }, friction: running, held: "left" },
    ),
  ];
  findings.push([
    "Racking counts neither hoops nor a drawbar, and not how far the base goes askew.",
  ]);
  const { cornerBraces } = house.links;
  if (cornerBraces && base.braces.length === 0) {
    findings.push(["Corner braces are counted against racking only where there are four."]);
  }
  return findings;
}
