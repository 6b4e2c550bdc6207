/** Loads at the nodes of a rail, and room for the three-moment equations; reused between solves. */
export interface ThreeMomentSpace {
  /** Places of the nodes, m. */
  readonly x: Float64Array;
  /** Forces on the nodes, N, up positive. */
  readonly force: Float64Array;
  /** Couples on the nodes, N m, counter-clockwise positive. */
  readonly couple: Float64Array;
  /** Uniform load, N/m, up positive. */
  uniform: number;
  /** Forces with those of supports that give at their cap. */
  readonly applied: Float64Array;
  /** Shear at the first held node from the left, and at the last from the right. */
  readonly endShear: Float64Array;
  /** Lengths between held nodes. */
  readonly span: Float64Array;
  /** Moment just left of each held node. */
  readonly moment: Float64Array;
  /** Force of each held node were all moments at held nodes zero. */
  readonly free: Float64Array;
  /** Softness of each held node against that of the rail, m3. */
  readonly give: Float64Array;
  /** Of each span as a simple beam: shear at its left end, and E I times the slopes at its ends. */
  readonly simpleShear: Float64Array;
  readonly slopeLeft: Float64Array;
  readonly slopeRight: Float64Array;
  /** Moment and shear that the loads within each span add up to at its right end. */
  readonly addedMoment: Float64Array;
  readonly addedShear: Float64Array;
  readonly diagonal: Float64Array;
  readonly next: Float64Array;
  readonly second: Float64Array;
  /** E I times the deflection of each held node, under the moments at hand. */
  readonly sag: Float64Array;
  readonly unknown: Float64Array;
}

export function threeMomentSpace(x: Float64Array): ThreeMomentSpace {
  const room = () => new Float64Array(x.length);
  return {
    x,
    force: room(),
    couple: room(),
    uniform: 0,
    applied: room(),
    endShear: new Float64Array(2),
    span: room(),
    moment: room(),
    free: room(),
    give: room(),
    simpleShear: room(),
    slopeLeft: room(),
    slopeRight: room(),
    addedMoment: room(),
    addedShear: room(),
    diagonal: room(),
    next: room(),
    second: room(),
    sag: room(),
    unknown: room(),
  };
}
