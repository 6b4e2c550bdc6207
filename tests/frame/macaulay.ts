import type { RailLoads, RailSolution } from "@hoopstay/frame";

/** Every force on a rail, its reactions with them. */
function forcesOn({ loads, supports }: RailSolution): { x: number; force: number }[] {
  return [...loads.forces, ...supports.map(({ x, reaction }) => ({ x, force: reaction }))];
}

/** What is left of the sums of forces and of moments about the left end: zero in equilibrium. */
export function imbalance(solution: RailSolution): { force: number; moment: number } {
  const { rail, loads } = solution;
  const forces = forcesOn(solution);
  const couples = loads.couples.reduce((sum, { couple }) => sum + couple, 0);
  return {
    force: forces.reduce((sum, { force }) => sum + force, loads.uniform * rail.length),
    moment: forces.reduce(
      (sum, { x, force }) => sum + force * x,
      (loads.uniform * rail.length ** 2) / 2 + couples,
    ),
  };
}

/** Sum of the sizes of all loads, N. */
export function sizeOf({ uniform, forces, couples }: RailLoads, length: number): number {
  const pushed = forces.reduce((sum, { force }) => sum + Math.abs(force), 0);
  const turned = couples.reduce((sum, { couple }) => sum + Math.abs(couple), 0);
  return pushed + Math.abs(uniform) * length + turned / length;
}

/**
 * The deflection that a solution's forces and reactions bend a rail to, by Macaulay's closed form
 * from the left end on; deflection and slope there are the solution's own.
 */
export function macaulayDeflection(solution: RailSolution, x: number): number {
  const { rail, loads, bent } = solution;
  const beyond = (place: number): number => Math.max(0, x - place);
  let bending = (loads.uniform * x ** 4) / 24;
  for (const { x: place, force } of forcesOn(solution)) bending += (force * beyond(place) ** 3) / 6;
  for (const { x: place, couple } of loads.couples) bending -= (couple * beyond(place) ** 2) / 2;
  const [start = Number.NaN] = bent.deflection;
  const [slope = Number.NaN] = bent.slope;
  return start + slope * x + bending / rail.stiffness;
}
