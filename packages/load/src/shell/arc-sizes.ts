/** Sizes of two mirrored arcs, as the arguments of their formulas. */
export const sizes = {
  b: ["b", "span", "length"],
  f: ["f", "rise", "length"],
  c: ["c", "offset of the arc's centre beyond the middle", "length"],
  e: ["e", "height of the arc's centre above the springing", "length"],
  R: ["R", "radius of the arcs", "length"],
  t0: ["t_0", "angle of the springing, seen from the arc's centre", "angle"],
  t1: ["t_1", "angle of the crown, seen from the arc's centre", "angle"],
  zs: ["z_s", "height of the springing", "length"],
} as const;
