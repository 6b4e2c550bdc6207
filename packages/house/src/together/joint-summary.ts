import type { JointCertificate, JointSummary } from "@hoopstay/core";
import { balanceOf, type Certificate, combinations, forceAt } from "@hoopstay/stability";
import type { Evaluation } from "../review/evaluate.ts";
import { gustOf, speedOf } from "../review/summaries.ts";
import { fromWords } from "../review/words.ts";
import { certificateAt, type JointResult } from "./joint.ts";

/** K_d q_h at which everything at once is just in balance, Pa. */
const jointLimit = ({ pressure }: Evaluation, { factor }: JointResult): number => factor * pressure;

const cornerName = (x: number, y: number): string =>
  `${y > 0 ? "front" : "back"} ${x > 0 ? "right" : "left"}`;

function certificateOf(
  { wind, weight, tethers, pushes }: Certificate,
  left: readonly number[],
  names: readonly string[],
): JointCertificate {
  const { down, slopeX, slopeY } = weight;
  return {
    wind,
    weight: [...forceAt(6, slopeX, slopeY, -down, weight)],
    tethers: tethers.map(({ x, y, toward, tension, sideX, sideY }, place) => {
      const force = [
        tension * toward[0] + sideX,
        tension * toward[1] + sideY,
        tension * toward[2],
      ] as const;
      const sums = [...forceAt(6, ...force, { x, y })];
      return { name: names[place] ?? `anchor ${place + 1}`, x, y, tension, force, sums };
    }),
    corners: pushes.map(({ x, y, push, frictionX, frictionY }) => {
      const sums = [...forceAt(6, frictionX, frictionY, push, { x, y })];
      return { name: cornerName(x, y), x, y, push, friction: [frictionX, frictionY], sums };
    }),
    left,
  };
}

/** The joint verdict in an owner's and a reviewer's terms, with the forces that prove it. */
export function jointSummary(evaluation: Evaluation, result: JointResult): JointSummary {
  const state = evaluation.states.find(({ set }) => set === result.set);
  const words = combinations.find(({ id }) => id === result.combination);
  const certificate = certificateAt(result);
  const names = evaluation.house.anchors.map(({ name }) => name);
  return {
    factor: result.factor,
    holds: result.factor >= 1 - 1e-12,
    gust: gustOf(speedOf(evaluation, jointLimit(evaluation, result))),
    state: state?.state.words ?? "",
    direction: fromWords(result.windCase, evaluation.site.frontBearing),
    loadCase: result.windCase.number,
    weight: result.weight,
    combination: words?.words ?? result.combination,
    certificate: certificate && certificateOf(certificate, balanceOf(certificate), names),
  };
}
