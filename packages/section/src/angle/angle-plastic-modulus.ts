/**
 * Plastic modulus of an angle about the axis along its lying leg, sharp corners. The plastic axis
 * halves the area: it runs in the lying leg if that leg holds half of it, else in the upright leg.
 *
 * @param upright leg standing across the axis, m
 * @param lying leg along the axis, m
 * @param thickness m, below the shorter leg
 * @returns m3
 * @example anglePlasticModulus(2, 2, 0.25) // 0.440 (in3): L2X2X1/4
 */
export function anglePlasticModulus(upright: number, lying: number, thickness: number): number {
  const half = (thickness * (upright + lying - thickness)) / 2;
  const free = upright - thickness;
  if (lying * thickness >= half) {
    const axis = half / lying;
    const above = thickness - axis;
    return (lying * (axis * axis + above * above)) / 2 + thickness * free * (above + free / 2);
  }
  const above = half / thickness;
  const below = free - above;
  return (
    (thickness * (above * above + below * below)) / 2 + lying * thickness * (below + thickness / 2)
  );
}
