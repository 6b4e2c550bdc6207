import { pointBeyond, type RailPoint } from "./along-rail.ts";
import type { BentRail } from "./bent-rail.ts";

/**
 * Where a rail carries most and lies farthest off; the exact places, not those of nodes only. Of equal
 * nodes the leftmost counts.
 */
export interface RailExtremes {
  readonly momentMost: RailPoint;
  readonly momentLeast: RailPoint;
  /** Greatest shear by size. */
  readonly shear: RailPoint;
  /** Greatest deflection by size. */
  readonly deflection: RailPoint;
}

/** Extremes of a rail: at nodes, and within them where shear or slope passes zero. */
export function railExtremes(bent: BentRail): RailExtremes {
  let most = pointBeyond(bent, 0, 0);
  let [least, shear, deflection] = [most, most, most];
  for (let node = 0; node + 1 < bent.x.length; node += 1) {
    const h = (bent.x[node + 1] as number) - (bent.x[node] as number);
    for (const way of [0, h, ...zeroShear(bent, node, h), ...zeroSlopes(bent, node, h)]) {
      const point = pointBeyond(bent, node, way);
      if (point.moment > most.moment) most = point;
      if (point.moment < least.moment) least = point;
      if (Math.abs(point.shear) > Math.abs(shear.shear)) shear = point;
      if (Math.abs(point.deflection) > Math.abs(deflection.deflection)) deflection = point;
    }
  }
  return { momentMost: most, momentLeast: least, shear, deflection };
}

const within =
  (h: number) =>
  (way: number): boolean =>
    way > 0 && way < h;

function zeroShear({ shear, uniform }: BentRail, node: number, h: number): number[] {
  return [-(shear[node] as number) / uniform].filter(within(h));
}

/** Zeros of the moment, between which the slope rises or falls throughout. */
function zeroMoments({ shear, moment, uniform }: BentRail, node: number, h: number): number[] {
  const [m, v] = [moment[node] as number, shear[node] as number];
  const root = Math.sqrt(v * v - 2 * uniform * m);
  const far = -(v + (v < 0 ? -root : root));
  return [far / uniform, (2 * m) / far].filter(within(h)).sort((a, b) => a - b);
}

function zeroSlopes(bent: BentRail, node: number, h: number): number[] {
  const slopeAt = (way: number): number => pointBeyond(bent, node, way).slope;
  const stations = [0, ...zeroMoments(bent, node, h), h];
  const zeros: number[] = [];
  for (const [index, from] of stations.slice(0, -1).entries()) {
    let [low, high] = [from, stations[index + 1] as number];
    const rising = slopeAt(high) > slopeAt(low);
    if (slopeAt(low) > 0 === slopeAt(high) > 0) continue;
    for (;;) {
      const middle = (low + high) / 2;
      if (middle <= low || middle >= high) break;
      if (slopeAt(middle) > 0 === rising) high = middle;
      else low = middle;
    }
    zeros.push(low);
  }
  return zeros;
}
