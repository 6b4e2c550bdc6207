/** 2 (4 - pi): what four rounded corners of radius 1 shorten the outline by. */
const shortening = 2 * (4 - Math.PI);

/**
 * Outline of a rectangle with rounded corners: the surface per metre that zinc covers.
 *
 * @param depth m
 * @param width m
 * @param radius corner radius, m; at most half the shorter side
 * @returns m
 * @example roundedOutline(2, 2, 1) // 2 pi: the rectangle has become a circle
 */
export function roundedOutline(depth: number, width: number, radius: number): number {
  return 2 * (depth + width) - shortening * radius;
}
