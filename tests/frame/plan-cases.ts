import {
  type Base,
  BasePlan,
  type CrossMember,
  type HoopOnRails,
  type PlanResponse,
  type RailSide,
} from "@hoopstay/frame";

/** Sixteen stiffnesses of a hoop from what spreading and turning its feet asks for. */
export function stiffnessFrom(three: readonly (readonly number[])[]): number[] {
  // Movements s, theta_left, theta_right of u_left, theta_left, u_right, theta_right.
  const movements = [
    [-1, 0, 0],
    [0, 1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ];
  return movements.flatMap((row) =>
    movements.map((column) =>
      three.reduce(
        (sum, line, i) =>
          sum + line.reduce((part, k, j) => part + (row[i] ?? 0) * k * (column[j] ?? 0), 0),
        0,
      ),
    ),
  );
}

/** A hoop that only keeps its feet apart. */
export const strut = (y: number, spread: number): HoopOnRails => ({
  y,
  stiffness: stiffnessFrom([
    [spread, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ]),
});

/** A hoop without any stiffness: its load stands as it is. */
export const limp = (y: number): HoopOnRails => strut(y, 0);

/** A cross member that gives by nothing that could be seen. */
export const rigidMember = (y: number): CrossMember => ({ y, axial: 1e16, bending: 1e16 });

export const rails = { bending: 2e5, twist: 1.5e5 };

export const baseOf = (given: Partial<Base>): Base => ({
  length: 12,
  span: 6,
  left: rails,
  right: rails,
  hoops: [],
  crossMembers: [],
  sideHold: "evenly",
  ...given,
});

/** Solves a base that must be held. */
export function heldPlan(
  base: Base,
  fixedEnd: ArrayLike<number>,
): { plan: BasePlan; response: PlanResponse } {
  const plan = new BasePlan(base);
  const response = plan.response();
  const outcome = plan.respond(fixedEnd, response);
  if (outcome !== "held") throw new Error(`${outcome}: ${plan.loose.join(", ")}`);
  return { plan, response };
}

export const sides = ["left", "right"] as const satisfies readonly RailSide[];

/** Hoops that push both rails outward with a force each: what clamps do is the opposite. */
export const thrusts = (forces: readonly number[]): number[] =>
  forces.flatMap((force) => [force, 0, -force, 0]);

export const stationAt = ({ y }: BasePlan, place: number): number =>
  y.findIndex((one) => Math.abs(one - place) < 1e-6);
