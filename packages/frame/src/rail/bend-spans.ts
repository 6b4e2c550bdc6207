import type { BentRail } from "./bent-rail.ts";
import type { HeldNodes } from "./held-nodes.ts";
import type { ThreeMomentSpace } from "./three-moment-space.ts";

/** With the moments known: forces of the held nodes, and the rail's shape from node to node. */
export function bendSpans(
  space: ThreeMomentSpace,
  { nodes, count, preload }: HeldNodes,
  preloadPart: number,
  bent: BentRail,
): void {
  const { x, applied, couple, uniform: q, moment, span, give, free } = space;
  const last = count - 1;
  bent.uniform = q;
  bent.reaction.fill(0);
  for (let i = 0; i < count; i += 1) {
    const node = nodes[i] as number;
    const reaction = (free[i] as number) + kink(moment, span, i, last);
    bent.reaction[node] = reaction;
    // E I times the deflection, until the end of this function.
    bent.deflection[node] =
      (give[i] as number) * (preloadPart * (preload[node] as number) - reaction);
  }
  let t = 0;
  for (let i = 0; i < count; i += 1) {
    const from = nodes[i] as number;
    const to = i < last ? (nodes[i + 1] as number) : x.length - 1;
    let [d, m] = [bent.deflection[from] as number, moment[i] as number];
    let v = space.endShear[1] as number;
    if (i < last) {
      const [h, right] = [span[i] as number, moment[i + 1] as number];
      const chord = ((bent.deflection[to] as number) - d) / h;
      t = chord - (h / 6) * (2 * m + right) + (space.slopeLeft[i] as number);
      v = (space.simpleShear[i] as number) + (right - m) / h;
    }
    for (let node = from; ; node += 1) {
      if (node > from) v += applied[node] as number;
      m -= couple[node] as number;
      if (node === to && i < last) break;
      bent.deflection[node] = d;
      bent.slope[node] = t;
      bent.moment[node] = m;
      bent.shear[node] = v;
      if (node === to) break;
      const h = (x[node + 1] as number) - (x[node] as number);
      d += h * (t + h * (m / 2 + h * (v / 6 + (h * q) / 24)));
      t += h * (m + h * (v / 2 + (h * q) / 6));
      m += h * (v + (h * q) / 2);
      v += h * q;
    }
  }
  bendLeftEnd(nodes[0] as number, q, bent);
  for (let node = 0; node < x.length; node += 1) {
    bent.deflection[node] = (bent.deflection[node] as number) / bent.stiffness;
    bent.slope[node] = (bent.slope[node] as number) / bent.stiffness;
  }
}

function bendLeftEnd(first: number, q: number, bent: BentRail): void {
  let [d, t] = [bent.deflection[first] as number, bent.slope[first] as number];
  for (let node = first - 1; node >= 0; node -= 1) {
    const h = (bent.x[node + 1] as number) - (bent.x[node] as number);
    const [m, v] = [bent.moment[node] as number, bent.shear[node] as number];
    t -= h * (m + h * (v / 2 + (h * q) / 6));
    d -= h * (t + h * (m / 2 + h * (v / 6 + (h * q) / 24)));
    bent.deflection[node] = d;
    bent.slope[node] = t;
  }
}

/** Change of slope at held node `i` of the broken line through values at held nodes. */
export function kink(value: Float64Array, span: Float64Array, i: number, last: number): number {
  const here = value[i] as number;
  const right = i < last ? ((value[i + 1] as number) - here) / (span[i] as number) : 0;
  const left = i > 0 ? (here - (value[i - 1] as number)) / (span[i - 1] as number) : 0;
  return right - left;
}
