import { type Evaluation, governingOf } from "@hoopstay/house";
import { lineTerms } from "@hoopstay/stability";

/** What the hand-flattened arithmetic finds: the worst lift off and slide of all states, ASD. */
export interface Floor {
  readonly lift: number;
  readonly slide: number;
}

/**
 * The same number of load cases, checks and weights as the whole-house check, as bare arithmetic on
 * flat arrays: no shapes, no take-off, no names, no outcomes. A floor for the time, not a method.
 */
export function flattenedFloor(evaluation: Evaluation): () => Floor {
  const { pressure: q } = evaluation;
  const sets = [...new Set(evaluation.states.map(({ set }) => set))];
  const flat = sets.map(({ table, holds: [hold] }) => {
    if (!hold) throw new Error("nothing holds the house");
    return {
      table: table.components,
      lines: hold.lines.map(({ nx, ny, distance }) => [nx, ny, distance] as const),
      rows: (["ASD", "LRFD"] as const).flatMap((id) =>
        hold.terms[id].holdings.map(({ terms }) => ({
          factor: terms.combination.wind,
          dead: terms.deadNormal,
          mu: terms.holding.friction,
          moments: hold.lines.map((line) => lineTerms(terms, line).weightMoment),
        })),
      ),
    };
  });
  const composed = new Float64Array(7);
  return () => {
    let lift = 0;
    let slide = 0;
    let limit = Number.POSITIVE_INFINITY;
    for (const { table, lines, rows } of flat) {
      for (let at = 0; at < table.length; at += 7) {
        // Stands for putting a case together: a product and a sum for every component.
        for (let k = 0; k < 7; k += 1) {
          composed[k] = 0.75 * (table[at + k] as number) + 0.25 * (table[at + k] as number);
        }
        const [fx, fy, fz, mx, my] = composed as unknown as [
          number,
          number,
          number,
          number,
          number,
        ];
        const bare = composed[6] as number;
        const h = Math.sqrt(fx * fx + fy * fy);
        const hBare = Math.sqrt(bare * bare + fy * fy);
        let turning = 0;
        for (const [nx, ny, a] of lines) turning = Math.max(turning, nx * my - ny * mx + a * fz);
        for (const { factor, dead, mu, moments } of rows) {
          const pulled = factor * q * fz;
          if (factor < 1) lift = Math.max(lift, pulled / dead);
          for (const moment of moments) limit = Math.min(limit, moment / (factor * turning));
          const grip = mu * Math.max(0, dead - pulled);
          const demand = factor * q * Math.max(h, hBare);
          if (factor < 1)
            slide = Math.max(slide, grip > 0 ? demand / grip : Number.POSITIVE_INFINITY);
          limit = Math.min(limit, (mu * dead) / (factor * (h + mu * fz)));
          limit = Math.min(limit, (mu * dead) / (factor * (hBare + mu * fz)));
        }
      }
    }
    if (Number.isNaN(limit)) throw new Error("the floor lost its way");
    return { lift, slide };
  };
}

/** The same two numbers from the evaluation itself. */
export function evaluatedFloor(evaluation: Evaluation): Floor {
  const worst = (check: string): number =>
    Math.max(
      ...evaluation.states.map(({ set }) => {
        const found = governingOf(set, "bare", "ASD").find((one) => one.check === check);
        return found?.byRatio.ratio ?? 0;
      }),
    );
  return { lift: worst("lift"), slide: worst("slide") };
}
