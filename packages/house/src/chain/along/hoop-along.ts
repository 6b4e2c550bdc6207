import { pointOnLine, tangentOnLine } from "@hoopstay/frame";
import { properties } from "@hoopstay/section";
import type { ChainContext } from "../context.ts";
import { steelOfTube } from "../steel.ts";
import { type OutOfPlane, outOfPlane, type PushAlong } from "./out-of-plane.ts";
import { type PurlinLine, purlinLines } from "./purlin-lines.ts";

/** A hoop pushed along the house, at the places where hoops are looked at. */
export interface HoopAlong {
  /** N m at each place of `runs.places`. */
  readonly bending: Float64Array;
  readonly torsion: Float64Array;
  readonly foot: OutOfPlane["foot"];
  /** Moment of one foot about the house's width at the bolts' mid-height, N m. */
  readonly atBolts: number;
}

/** What one hoop does under a push along the house. */
export interface HoopsAlong {
  readonly lines: readonly PurlinLine[];
  /** One newton, shared by ridge and purlins as they share the end walls; null without them. */
  readonly byPurlins: HoopAlong | null;
  /** One newton as an end wall leans on its hoop. */
  readonly byWall: HoopAlong;
  /** One newton on every metre. */
  readonly even: HoopAlong;
}

/** Pushes that stand for a push spread along half a hoop. */
const spread = 60;

const known = new WeakMap<ChainContext, HoopsAlong>();

export function hoopsAlong(context: ChainContext): HoopsAlong {
  let made = known.get(context);
  if (!made) {
    made = makeHoopsAlong(context);
    known.set(context, made);
  }
  return made;
}

function makeHoopsAlong({ evaluation, runs }: ChainContext): HoopsAlong {
  const { house, shell } = evaluation;
  const { line, leg, arch, hinge } = runs.outline;
  const { tube } = house.links.hoop;
  const { modulus, shearModulus } = steelOfTube(house.links.hoop);
  const { secondMomentX, torsionConstant } = properties(tube);
  const answer = (pushes: readonly PushAlong[]): HoopAlong => {
    const stiffness = [modulus * secondMomentX, shearModulus * torsionConstant] as const;
    const { at, foot } = outOfPlane(line, pushes, ...stiffness);
    const along = runs.places.map(({ s }) => at(s));
    return {
      bending: Float64Array.from(along, ({ bending }) => bending),
      torsion: Float64Array.from(along, ({ torsion }) => torsion),
      foot,
      atBolts: Math.max(0, foot.tipping - foot.shear * hinge),
    };
  };
  const lines = purlinLines(house, shell);
  const onLeft = lines.filter(({ archShare }) => archShare <= crownShare + slack);
  const byLines = onLeft.map(({ archShare, wallShare }) => ({
    s: leg + archShare * arch,
    force: archShare > crownShare - slack ? wallShare / 2 : wallShare,
  }));
  const half = line.length / 2;
  const places = Array.from({ length: spread }, (_, step) => ((step + 0.5) * half) / spread);
  const heights = places.map((s) => pointOnLine(line, s).z * tangentOnLine(line, s).x);
  const all = 2 * heights.reduce((sum, height) => sum + height, 0);
  return {
    lines,
    byPurlins: byLines.length > 0 ? answer(byLines) : null,
    byWall: answer(places.map((s, at) => ({ s, force: (heights[at] as number) / all }))),
    even: answer(places.map((s) => ({ s, force: half / spread }))),
  };
}

const crownShare = 0.5;
const slack = 1e-9;
