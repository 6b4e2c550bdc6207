import {
  type MemberStrengths,
  memberSection,
  memberStrengths,
  type Worksheet,
} from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import { steelOfTube } from "../steel.ts";
import { forceOverStrength, found, momentOverStrength } from "../superposed.ts";
import type { RailAction } from "./rail-action.ts";

/** Longest stretch of rail between cross members, or all of it, m. */
export function betweenMembers({ rail, links }: House): number {
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

/** What a rail is checked with, N m and N. */
export type RailStrength = Readonly<
  Record<
    "momentX" | "momentY" | "shear" | "torsion",
    { readonly ASD: number; readonly LRFD: number }
  >
>;

/** The strengths a rail is checked with, or why there are none. */
export function railStrengthOf({
  momentX,
  momentY,
  shearX,
  shearY,
  torsion,
}: MemberStrengths): RailStrength | string {
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

/** Shares of a rail's strength at one place: moments up and down and in plan, shear, torsion. */
export interface RailShares {
  readonly x: number;
  readonly y: number;
  readonly v: number;
  readonly t: number;
}

export const railShares = (
  action: RailAction,
  can: RailStrength,
  method: "ASD" | "LRFD",
  at: number,
): RailShares => ({
  x: (action.vertical[at] as number) / can.momentX[method],
  y: (action.plan[at] as number) / can.momentY[method],
  v: (action.shear[at] as number) / can.shear[method],
  t: (action.torque[at] as number) / can.torsion[method],
});

const bySolver =
  "rail on its anchors and the ground, and with all hoops in plan: the greatest in size";

/** The same on a sheet, each force with its strength. */
export function workRailShares(
  sheet: Worksheet,
  action: RailAction,
  can: RailStrength,
  method: "ASD" | "LRFD",
  at: number,
  note: string,
): RailShares {
  const one = (symbol: string, name: string, size: Float64Array, measure: "moment" | "force") =>
    sheet.work(found(symbol, name, size[at] as number, measure, bySolver), [], { note });
  const up = one("M_x", "moment up and down", action.vertical, "moment");
  const plan = one("M_y", "moment in plan", action.plan, "moment");
  const shear = one("V", "shear, both ways together", action.shear, "force");
  const torque = one("T", "torque", action.torque, "moment");
  const over = (symbol: string, moment: number, strength: number): number =>
    sheet.work(momentOverStrength, [moment, strength], { symbol });
  return {
    x: over("m_x", up, can.momentX[method]),
    y: over("m_y", plan, can.momentY[method]),
    t: over("t", torque, can.torsion[method]),
    v: sheet.work(forceOverStrength, [shear, can.shear[method]], { symbol: "v" }),
  };
}
