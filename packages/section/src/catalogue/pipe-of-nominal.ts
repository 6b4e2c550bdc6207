import { pipe } from "./pipe.ts";
import type { CatalogueSize } from "./size.ts";

const near = (value: number, other: number): boolean => Math.abs(value / other - 1) < 0.02;

/**
 * The pipe that a round tube is likely meant to be: its outside, m, is that pipe's nominal size and its
 * wall, m, that pipe's wall. A pipe is larger outside than its name.
 */
export function pipeOfNominal(outside: number, wall: number): CatalogueSize | undefined {
  return pipe.find(({ nominal, shape }) => near(outside, nominal) && near(wall, shape.wall));
}
