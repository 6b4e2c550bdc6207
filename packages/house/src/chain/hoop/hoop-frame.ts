import {
  type Hoop,
  type HoopBar,
  HoopFrame,
  type HoopLoad,
  type MemberSection,
  type PlanePoint,
  pointOnLine,
} from "@hoopstay/frame";
import { properties } from "@hoopstay/section";
import type { House } from "../../model/house-model.ts";
import type { PlacedBars } from "../../model/link-parts.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import { steelOfTube } from "../steel.ts";
import { type HoopOutline, placeOnHoop } from "./hoop-outline.ts";

/** What a bar of the frame is, for its own check. */
export interface FramedBar {
  readonly what: "collar tie" | "truss bar" | "knee brace";
  readonly piece: SteelTube;
  readonly length: number;
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

/** A hoop as a frame, its unit loads in the order of the wind's stretches, weight, and push. */
export interface FramedHoop {
  readonly frame: HoopFrame;
  readonly bars: readonly FramedBar[];
  readonly hinged: boolean;
}

/** Unit loads of every frame: eight stretches of pressure, the hoop's weight, a push along +x. */
export const stretchCount = 8;
export const weightLoad = 8;
export const pushLoad = 9;
export const loadCount = 10;

/** A stretch shorter than this has no length but rounding, m. */
const hair = 1e-9;

const unitLoads = ({ bounds }: HoopOutline): HoopLoad[] => [
  ...Array.from({ length: stretchCount }, (_, stretch): HoopLoad => {
    const [from, to] = [bounds[stretch] as number, bounds[stretch + 1] as number];
    // Nothing presses on legs of no length: any load keeps their place in the list.
    return to - from > hair ? { kind: "normal", from, to } : { kind: "weight" };
  }),
  { kind: "weight" },
  { kind: "push" },
];

function frameSection({ tube, steel }: SteelTube): MemberSection {
  const { area, secondMomentX } = properties(tube);
  return { A: area, I: secondMomentX, E: steelOfTube({ tube, steel }).modulus };
}

/** One hoop, with the bars that tie it or without, hinged at its bolts or through to the rail. */
export function framedHoop(
  house: House,
  outline: HoopOutline,
  { tied, hinged }: { readonly tied: boolean; readonly hinged: boolean },
): FramedHoop {
  const { hoop } = house.links;
  const { bars, framed, joints } = tied ? tieBars(house, outline) : untied;
  const { hinge, line } = outline;
  const made: Hoop = {
    line,
    section: frameSection(hoop),
    hinges: hinged ? [hinge, line.length - hinge] : [],
    joints,
    bars,
  };
  return { frame: new HoopFrame(made, unitLoads(outline)), bars: framed, hinged };
}

const untied = { bars: [], framed: [], joints: [] };

interface Tied {
  readonly bars: HoopBar[];
  readonly framed: FramedBar[];
  readonly joints: PlanePoint[];
}

/** A place across within this of another is the same joint, m. */
const near = 1e-3;

/** Whether the frame has bars beside the hoop itself. */
export const hasTies = ({ links }: House): boolean => links.ties !== null;

/** The collar tie as a beam through the joints where bars meet it, and those bars. */
function tieBars(house: House, outline: HoopOutline): Tied {
  const { ties, trussBars, kneeBraces } = house.links;
  if (!ties) return { bars: [], framed: [], joints: [] };
  const left = placeOnHoop(outline, ties.height, "left");
  const right = placeOnHoop(outline, ties.height, "right");
  const reach = halfChord(outline, right);
  const braces = [
    ...placed(outline, trussBars, "truss bar", ties.height),
    ...placed(outline, kneeBraces, "knee brace", ties.height),
  ].filter(({ onTie }) => onTie < reach - near);
  const across = [...new Set(braces.flatMap(({ onTie }) => [-onTie, onTie]))].sort((a, b) => a - b);
  const joints = across.map((x) => ({ x, z: ties.height }));
  const section = frameSection(ties);
  const bars: HoopBar[] = [];
  const framed: FramedBar[] = [];
  const ends = [-reach, ...across, reach];
  for (let part = 0; part + 1 < ends.length; part += 1) {
    const first = part === 0;
    const last = part + 2 === ends.length;
    bars.push({
      from: first ? { s: left } : { joint: part - 1 },
      to: last ? { s: right } : { joint: part },
      section,
      fromEnd: first ? "pinned" : "rigid",
      toEnd: last ? "pinned" : "rigid",
      weight: 0,
    });
    const [from, to] = [ends[part] as number, ends[part + 1] as number];
    framed.push(barOf("collar tie", ties, { x: from, z: ties.height }, { x: to, z: ties.height }));
  }
  for (const { what, piece, onTie, onHoop } of braces) {
    for (const side of ["left", "right"] as const) {
      const sign = side === "left" ? -1 : 1;
      const x = sign * onTie;
      bars.push({
        from: { joint: across.indexOf(x) },
        to: { s: placeOnHoop(outline, onHoop.z, side) },
        section: frameSection(piece),
        fromEnd: "pinned",
        toEnd: "pinned",
        weight: 0,
      });
      framed.push(barOf(what, piece, { x, z: ties.height }, { x: sign * onHoop.x, z: onHoop.z }));
    }
  }
  return { bars, framed, joints };
}

function barOf(
  what: FramedBar["what"],
  { tube, steel }: SteelTube,
  from: PlanePoint,
  to: PlanePoint,
): FramedBar {
  const length = Math.hypot(to.x - from.x, to.z - from.z);
  return { what, piece: { tube, steel }, length, from, to };
}

const halfChord = (outline: HoopOutline, place: number): number =>
  Math.abs(pointOnLine(outline.line, place).x);

interface Brace {
  readonly what: "truss bar" | "knee brace";
  readonly piece: SteelTube;
  readonly onTie: number;
  readonly onHoop: PlanePoint;
}

/** A bar with both ends entered: the end nearer to the tie's height stands on the tie. */
function placed(
  outline: HoopOutline,
  bars: PlacedBars | null,
  what: Brace["what"],
  height: number,
): Brace[] {
  if (!bars?.from || !bars.to) return [];
  const ends = [bars.from, bars.to].toSorted(
    (a, b) => Math.abs(a.z - height) - Math.abs(b.z - height),
  );
  const [onTie, far] = ends as [PlanePoint, PlanePoint];
  const place = placeOnHoop(outline, far.z, "right");
  return [{ what, piece: bars, onTie: onTie.x, onHoop: pointOnLine(outline.line, place) }];
}
