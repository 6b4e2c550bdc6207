/** Moments and pulls of one rail in vertical bending, the worse of every way of computing it. */
export interface VerticalAnswer {
  /** Greatest moment in size at each place looked at, N m. */
  readonly moments: Float64Array;
  /** Greatest shear in size beside each place, N. */
  readonly shears: Float64Array;
  /** Greatest upright pull of each anchor of the rail, N. */
  readonly pulls: Float64Array;
}

export const noBending = (places: number, anchors: number): VerticalAnswer => ({
  moments: new Float64Array(places),
  shears: new Float64Array(places),
  pulls: new Float64Array(anchors),
});
