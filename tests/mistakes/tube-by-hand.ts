/** Area, in2, and section modulus, in3, of a round tube by its outside and wall, in. */
export function roundTube(outside: number, wall: number) {
  const inside = outside - 2 * wall;
  const area = (Math.PI / 4) * (outside ** 2 - inside ** 2);
  const modulus = (Math.PI / 32) * ((outside ** 4 - inside ** 4) / outside);
  return { area, modulus };
}
