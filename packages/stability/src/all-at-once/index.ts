export { balanceOf, balanceSums } from "./balance.ts";
export { type CaseActions, slopesOf, windOf } from "./case-actions.ts";
export { type Certificate, certificateOf, type Push, type Tether } from "./certificate.ts";
export { polygonCitation, polygonCorners, polygonSides } from "./friction-polygon.ts";
export { jointFactor } from "./joint-factor.ts";
export {
  type Corner,
  cornerSets,
  type JointProblem,
  type JointWork,
  jointProblems,
  type LateralHold,
} from "./joint-problem.ts";
export { forceAt, type JointSystem, jointSystem } from "./joint-system.ts";
export { separationAt } from "./separation.ts";
export { SolverFault } from "./solver-fault.ts";
export { jointOfEachCase, type WorstJoint, worstJoint } from "./worst-joint.ts";
