/** Numbers that `step` writes. */
export const stepSize = 7;

/**
 * The way from a point of a circular or straight line to another one further on: writes
 *
 * 0, 1. the way in x and z, m;
 * 2, 3. the direction there (unit vector);
 * 4. moment of a unit weight per length on that way about its end: sigma dx - integral of dx, m2;
 * 5. half the square of the straight distance, m2: the moment of a unit normal load;
 * 6. moment of a unit push per length on that way about its end: sigma dz - integral of dz, m2.
 *
 * Half angles keep it exact for short steps.
 *
 * @param curvature turn to the right per length, 1/m
 * @param cos direction at the start, cosine
 * @param sin direction at the start, sine
 * @param length way along the line, m
 */
export function step(
  curvature: number,
  cos: number,
  sin: number,
  length: number,
  into: Float64Array,
): void {
  if (curvature === 0) {
    into[0] = length * cos;
    into[1] = length * sin;
    into[2] = cos;
    into[3] = sin;
    into[4] = (length * length * cos) / 2;
    into[5] = (length * length) / 2;
    into[6] = (length * length * sin) / 2;
    return;
  }
  const radius = 1 / curvature;
  const turn = length * curvature;
  const half = Math.sin(turn / 2);
  const turnSin = 2 * half * Math.cos(turn / 2);
  const dip = 2 * half * half;
  const along = radius * turnSin;
  const across = -radius * dip;
  const dx = along * cos - across * sin;
  into[0] = dx;
  const dz = along * sin + across * cos;
  into[1] = dz;
  into[2] = cos * (1 - dip) + sin * turnSin;
  into[3] = sin * (1 - dip) - cos * turnSin;
  const sumAlong = radius * radius * dip;
  const sumAcross = radius * (along - length);
  into[4] = length * dx - (sumAlong * cos - sumAcross * sin);
  into[5] = radius * radius * dip;
  into[6] = length * dz - (sumAlong * sin + sumAcross * cos);
}
