import { arcHeightAt, cornerWidth, effectiveArea, type Shell, wallComponent } from "@hoopstay/load";
import { type LumberStrength, lumberStrength, type Worksheet } from "@hoopstay/strength";
import type { Door, Studs } from "../../model/link-parts.ts";
import { ratedResistance, unrated } from "../demand.ts";
import type { LinkRow } from "../link.ts";
import { windRow } from "../worked-row.ts";
import {
  type ComponentGroup,
  componentCases,
  harder,
  type NetComponent,
  netComponent,
  workPressure,
} from "./component-groups.ts";
import { pressedWidth, spanMoment, spanReaction } from "./component-loads.ts";

/** A stud of an end wall, from the ground to the hoop, m. */
interface Stud {
  readonly words: string;
  readonly length: number;
  readonly width: number;
  readonly corner: boolean;
}

/** Tallest stud away from the corners, tallest near one, and a jamb of the widest door. */
function studsToCheck(shell: Shell, { spacing }: Studs, doors: readonly Door[]): Stud[] {
  const heightAt = (x: number): number => shell.springing + arcHeightAt(shell.arc, x);
  const strip = Math.max(0, shell.b / 2 - cornerWidth.evaluate(shell.b, shell.h));
  const widest = Math.max(0, ...doors.map(({ width }) => width));
  const studs = [
    { words: "stud in the middle", length: shell.crown, width: spacing, corner: false },
    { words: "stud near a corner", length: heightAt(strip), width: spacing, corner: true },
  ];
  if (widest === 0) return studs;
  const x = Math.min(widest, shell.b) / 2;
  const [length, width, corner] = [heightAt(x), (widest + spacing) / 2, x >= strip];
  return [...studs, { words: "stud beside the door", length, width, corner }];
}

/** Grade unknown: the weaker one; outdoors: wet. */
export const studStrength = (
  { wood, thickness, width }: Studs,
  sheet?: Worksheet,
): ReturnType<typeof lumberStrength> =>
  lumberStrength({ wood, grade: "stud", thickness, width, loaded: "edge", wet: true }, sheet);

/** What a wall's studs are to be checked for. */
interface StudRows {
  readonly bending: readonly LinkRow[];
  readonly fixing: readonly LinkRow[];
  /** Moment of the worst stud for a net pressure of one, N m per Pa. */
  readonly perPressure: number;
}

/**
 * Studs as simple spans under component pressure, inward or outward, and the fixing of their ends.
 *
 * @param wall words: the front end wall
 */
export function studRows(
  shell: Shell,
  studs: Studs,
  doors: readonly Door[],
  groups: readonly ComponentGroup[],
  strength: LumberStrength | null,
  wall: string,
): StudRows {
  const all = studsToCheck(shell, studs, doors);
  const bending: LinkRow[] = [];
  const fixing: LinkRow[] = [];
  for (const { words, length, width, corner } of all) {
    const area = effectiveArea.evaluate(length, width);
    const load = (sheet: Worksheet, q: number, of: NetComponent): number =>
      sheet.work(pressedWidth, [workPressure(sheet, q, of), width]);
    for (const group of groups) {
      const outside = wallComponent(group.table, corner, area);
      const one = (way: "inward" | "outward") => netComponent(group, outside, way, wall);
      const worse = harder(one("inward"), one("outward"));
      for (const windCase of componentCases(worse)) {
        const run = worse.way === "inward" ? "pressed inward" : "drawn outward";
        const about = { link: "end-wall", place: wall, run, windCase } as const;
        const reaction = (sheet: Worksheet, q: number): number =>
          sheet.work(spanReaction, [load(sheet, q, worse), length]);
        const { fixing: holds } = studs;
        const held = holds === null ? unrated : ratedResistance(holds);
        const fixed = { ...about, part: `fixing of the ${words}`, measure: "force" } as const;
        fixing.push(windRow(fixed, reaction, held));
        if (!strength) continue;
        const print = (sheet: Worksheet) => void studStrength(studs, sheet);
        const bent = { ...about, part: `bending of the ${words}`, measure: "moment" } as const;
        const sheared = { ...about, part: `shear of the ${words}`, measure: "force" } as const;
        const moment = (sheet: Worksheet, q: number): number =>
          sheet.work(spanMoment, [load(sheet, q, worse), length]);
        bending.push(windRow(bent, moment, strength.moment, print));
        bending.push(windRow(sheared, reaction, strength.shear, print));
      }
    }
  }
  const perPressure = Math.max(...all.map((one) => spanMoment.evaluate(one.width, one.length)));
  return { bending, fixing, perPressure };
}
