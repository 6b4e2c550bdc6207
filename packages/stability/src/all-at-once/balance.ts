import { type Argument, derived, type Formula, sumOf } from "@hoopstay/core";
import type { Certificate } from "./certificate.ts";
import { forceAt } from "./joint-system.ts";

/** One force of a certificate: symbols and words, and its six sums about the origin. */
interface Part {
  readonly symbol: string;
  readonly name: string;
  readonly sums: ArrayLike<number>;
}

const axes = ["Fx", "Fy", "Fz", "Mx", "My", "Mz"] as const;
const words = [
  "forces across",
  "forces along",
  "forces upward",
  "moments about the x axis",
  "moments about the y axis",
  "moments about the z axis",
];

/** Every force of a certificate, in the order in which it is printed. */
function partsOf({ wind, weight, tethers, pushes }: Certificate): Part[] {
  const { slopeX, slopeY, down } = weight;
  return [
    { symbol: "W", name: "wind", sums: wind },
    { symbol: "D", name: "weight", sums: forceAt(6, slopeX, slopeY, -down, weight) },
    ...tethers.map(({ tension, toward, sideX, sideY, ...at }, place) => ({
      symbol: `T_${place + 1}`,
      name: `anchor ${place + 1}`,
      sums: forceAt(
        6,
        tension * toward[0] + sideX,
        tension * toward[1] + sideY,
        tension * toward[2],
        at,
      ),
    })),
    ...pushes.map(({ push, frictionX, frictionY, ...at }, place) => ({
      symbol: `N_${place + 1}`,
      name: `ground at corner ${place + 1}`,
      sums: forceAt(6, frictionX, frictionY, push, at),
    })),
  ];
}

/** What is left over of the six sums of a certificate, N and N m: nought but for rounding. */
export function balanceOf(certificate: Certificate): number[] {
  const parts = partsOf(certificate);
  return axes.map((_, axis) => parts.reduce((sum, part) => sum + (part.sums[axis] as number), 0));
}

/** The six sums as steps of working. Forces that add nothing to a sum are left out of it. */
export function balanceSums(
  certificate: Certificate,
): { readonly formula: Formula; readonly inputs: readonly number[] }[] {
  const parts = partsOf(certificate);
  return axes.map((axis, place) => {
    const measure = place < 3 ? "force" : "moment";
    const present = parts.filter(({ sums }) => sums[place] !== 0);
    const terms = present.map(
      ({ symbol, name }): Argument => ({ symbol: `${symbol}_${axis}`, name, measure }),
    );
    const title = `sum of ${words[place]}: nought in equilibrium`;
    const formula = sumOf(`joint-${axis}`, `S_${axis}`, title, measure, terms, citation);
    return { formula, inputs: present.map(({ sums }) => sums[place] as number) };
  });
}

const citation = derived("equilibrium of everything that acts on the house");
