/** What one load does to one rail, at each station; jumps are taken just behind it (toward +y). */
export interface RailResponse {
  /** Way u toward +x, m. */
  readonly deflection: Float64Array;
  /** du/dy. */
  readonly slope: Float64Array;
  /** Plan moment E I d2u/dy2, N m. */
  readonly moment: Float64Array;
  /** Shear, N: the sum of all forces toward +x on the rail up to there. */
  readonly shear: Float64Array;
  /** Turn theta about the rail's axis. */
  readonly twist: Float64Array;
  /** Torque G J dtheta/dy, N m; the same up to the next station. */
  readonly torque: Float64Array;
}

/**
 * What one load does to a base. Everything in it is linear in the load: `values` is all of it in one
 * array, the others are windows on that. "On" says which way a force acts.
 */
export interface PlanResponse {
  readonly values: Float64Array;
  /** Of each hoop u, theta of its left foot, u, theta of its right one. */
  readonly footDisplacement: Float64Array;
  /** Of each hoop H, M on its left foot, H, M on its right one: what the rails do to it. */
  readonly footForce: Float64Array;
  /** Axial force of each cross member, N, tension positive. */
  readonly crossAxial: Float64Array;
  /** Moment on the left and on the right end of each cross member, N m, in the sense of theta. */
  readonly crossEndMoment: Float64Array;
  /** Force of each lateral anchor on its rail, N. */
  readonly anchorForce: Float64Array;
  /** Line load on each rail where the side is held evenly: at mid-length, N/m; its rise, N/m2. */
  readonly evenHold: Float64Array;
  readonly left: RailResponse;
  readonly right: RailResponse;
}

export function planResponse(
  hoops: number,
  crossMembers: number,
  anchors: number,
  stations: number,
): PlanResponse {
  const size = 8 * hoops + 3 * crossMembers + anchors + 2 + 12 * stations;
  const values = new Float64Array(size);
  let used = 0;
  const window = (length: number): Float64Array => {
    used += length;
    return values.subarray(used - length, used);
  };
  const rail = (): RailResponse => ({
    deflection: window(stations),
    slope: window(stations),
    moment: window(stations),
    shear: window(stations),
    twist: window(stations),
    torque: window(stations),
  });
  return {
    values,
    footDisplacement: window(4 * hoops),
    footForce: window(4 * hoops),
    crossAxial: window(crossMembers),
    crossEndMoment: window(2 * crossMembers),
    anchorForce: window(anchors),
    evenHold: window(2),
    left: rail(),
    right: rail(),
  };
}

/**
 * Superposition: `into` becomes the sum of the responses of one base times their factors. It may be
 * one of them only if it is the first.
 */
export function combinePlanResponses(
  responses: readonly PlanResponse[],
  factors: ArrayLike<number>,
  into: PlanResponse,
): void {
  const sum = into.values;
  for (let one = 0; one < responses.length; one += 1) {
    const { values } = responses[one] as PlanResponse;
    const factor = factors[one] as number;
    for (let i = 0; i < sum.length; i += 1) {
      sum[i] = (one === 0 ? 0 : (sum[i] as number)) + factor * (values[i] as number);
    }
  }
}
