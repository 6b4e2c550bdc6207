import type { BentRail } from "./bent-rail.ts";
import type { HeldNodes } from "./held-nodes.ts";
import type { ThreeMomentSpace } from "./three-moment-space.ts";

/** Walks the rail left of the first held node: its moments and shears follow from loads alone. */
export function leftEnd(space: ThreeMomentSpace, { nodes }: HeldNodes, bent: BentRail): void {
  const { x, applied, couple, uniform, moment, endShear } = space;
  const first = nodes[0] as number;
  let [m, v] = [0, 0];
  for (let node = 0; node < first; node += 1) {
    v += applied[node] as number;
    m -= couple[node] as number;
    bent.shear[node] = v;
    bent.moment[node] = m;
    const h = (x[node + 1] as number) - (x[node] as number);
    m += h * (v + (h * uniform) / 2);
    v += h * uniform;
  }
  moment[0] = m;
  endShear[0] = v;
}

/** Sums what stands right of the last held node. */
export function rightEnd(space: ThreeMomentSpace, { nodes, count }: HeldNodes): void {
  const { x, applied, couple, uniform, moment, endShear } = space;
  const last = nodes[count - 1] as number;
  const from = x[last] as number;
  const rest = (x[x.length - 1] as number) - from;
  let m = (uniform * rest * rest) / 2 + (couple[last] as number);
  let v = -uniform * rest;
  for (let node = last + 1; node < x.length; node += 1) {
    m += (applied[node] as number) * ((x[node] as number) - from) + (couple[node] as number);
    v -= applied[node] as number;
  }
  moment[count - 1] = m;
  endShear[1] = v;
}

/** Each span as a simple beam under its own loads, and the held forces that these alone ask for. */
export function spanLoads(space: ThreeMomentSpace, { nodes, count }: HeldNodes): void {
  const { x, applied, couple, uniform: q } = space;
  let before = space.endShear[0] as number;
  for (let i = 0; i + 1 < count; i += 1) {
    const [from, to] = [nodes[i] as number, nodes[i + 1] as number];
    let [d, t, m, v] = [0, 0, -(couple[from] as number), 0];
    for (let node = from; node < to; node += 1) {
      if (node > from) {
        v += applied[node] as number;
        m -= couple[node] as number;
      }
      const h = (x[node + 1] as number) - (x[node] as number);
      d += h * (t + h * (m / 2 + h * (v / 6 + (h * q) / 24)));
      t += h * (m + h * (v / 2 + (h * q) / 6));
      m += h * (v + (h * q) / 2);
      v += h * q;
    }
    const length = (x[to] as number) - (x[from] as number);
    const shear = -m / length;
    const slope = -(d / length + (shear * length * length) / 6);
    space.span[i] = length;
    space.simpleShear[i] = shear;
    space.slopeLeft[i] = slope;
    space.slopeRight[i] = slope + (shear * length * length) / 2 + t;
    space.addedMoment[i] = m;
    space.addedShear[i] = v;
    space.free[i] = shear - before - (applied[from] as number);
    before = shear + v;
  }
  const last = nodes[count - 1] as number;
  space.free[count - 1] = (space.endShear[1] as number) - before - (applied[last] as number);
}
