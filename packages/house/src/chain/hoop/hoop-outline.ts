import { type HoopLine, type HoopPiece, hoopLine, placeAtHeight } from "@hoopstay/frame";
import { type Arc, hoopSection, type Shell, shellOf } from "@hoopstay/load";
import type { House } from "../../model/house-model.ts";
import { bracedBays } from "../along/braced-bays.ts";
import { purlinLines } from "../along/purlin-lines.ts";

/** The centre line of a hoop from the left rail's top face over the crown to the right one's. */
export interface HoopOutline {
  readonly line: HoopLine;
  /** Developed length from rail to springing, and of the arch between its springings, m. */
  readonly leg: number;
  readonly arch: number;
  /** Where the stretches of the wind's pressure begin and end, in rising order, m. */
  readonly bounds: readonly number[];
  /** Bolts' mid-height along the hoop from either foot, m: where a pinned foot turns. */
  readonly hinge: number;
  /** Longest stretch of hoop that nothing holds out of its plane, m: all of it, or between purlins. */
  readonly unbraced: number;
  /** Half the centre angle of the arch and the greatest radius of its arcs. */
  readonly halfAngle: number;
  readonly radius: number;
  /** Slope against an upright leg with which the arc springs, whichever way. */
  readonly springSlope: number;
}

/** Half the stub where no bolt is entered. */
function hingeHeight({ links: { stub } }: House): number {
  const { bolts, length } = stub;
  return bolts ? bolts.first + ((bolts.count - 1) * bolts.spacing) / 2 : length / 2;
}

/** Straight tube between the rail's top face and the springing, m; none below a hair. */
export function legOf({ lines, rail }: House): number {
  const leg = lines.springing - rail.depth;
  return leg > 1e-9 ? leg : 0;
}

function piecesOf(house: House, arc: Arc): HoopPiece[] {
  const { lines, rail } = house;
  const half = lines.span / 2;
  const { springing } = lines;
  const centre = (x: number) => ({ x, z: springing + arc.e });
  const { radius, springAngle, crownAngle } = arc;
  const arcs: HoopPiece[] =
    arc.c === 0
      ? [arcPiece(centre(0), radius, Math.PI - springAngle, springAngle)]
      : [
          arcPiece(centre(arc.c), radius, Math.PI - springAngle, Math.PI - crownAngle),
          arcPiece(centre(-arc.c), radius, crownAngle, springAngle),
        ];
  if (legOf(house) === 0) return arcs;
  const leg = (x: number, up: boolean): HoopPiece => {
    const [low, high] = [
      { x, z: rail.depth },
      { x, z: springing },
    ];
    return { kind: "straight", from: up ? low : high, to: up ? high : low };
  };
  return [leg(-half, true), ...arcs, leg(half, false)];
}

const arcPiece = (
  centre: { x: number; z: number },
  radius: number,
  fromAngle: number,
  toAngle: number,
): HoopPiece => ({ kind: "arc", centre, radius, fromAngle, toAngle });

/** @param shell the shell the wind sees; its stretches are laid on the hoop's own centre line */
export function hoopOutline(house: House, shell: Shell): HoopOutline {
  const { lines } = house;
  const { arc } = shellOf({ ...lines, hoopDiameter: 0 });
  const line = hoopLine(piecesOf(house, arc));
  const leg = legOf(house);
  const bounds = hoopSection(shell).map(({ archShare }, place) => {
    if (archShare !== null) return leg + archShare * arc.length;
    return place === 0 ? 0 : line.length;
  });
  return {
    line,
    unbraced: unbracedStretch(house, shell, leg, arc.length),
    leg,
    arch: arc.length,
    bounds,
    hinge: hingeHeight(house),
    halfAngle: arc.crownAngle - arc.springAngle,
    radius: arc.radius,
    springSlope: Math.tan(Math.abs(arc.springAngle)),
  };
}

/**
 * Purlins and ridge hold the hoops where the end bays are braced and their clamps are rated; from the
 * foot to the lowest of them the leg counts as well.
 */
function unbracedStretch(house: House, shell: Shell, leg: number, arch: number): number {
  const braced = bracedBays(house);
  const held = braced !== null && typeof braced !== "string";
  const lines = held ? purlinLines(house, shell).filter(({ part }) => part.slip !== null) : [];
  const places = lines.map(({ archShare }) => leg + archShare * arch);
  const ends = [0, ...places, arch + 2 * leg];
  return Math.max(...ends.slice(1).map((end, at) => end - (ends[at] as number)));
}

/** Developed place of a height above the ground on one half of the hoop, m. */
export const placeOnHoop = (
  { line }: HoopOutline,
  height: number,
  side: "left" | "right",
): number => placeAtHeight(line, height, side);
