import { RailSolver, type RailSupport } from "@hoopstay/frame";
import { type RailAnchor, type RailLoads, stiffnessTimes } from "@hoopstay/house";

/** Worst pull along each tether by the rail solver alone, load by load; null where not held. */
export function bySolver(
  loads: RailLoads,
  anchors: readonly RailAnchor[],
  side: RailAnchor["side"],
): number[] | null {
  const { rail, stations, ground, middle } = loads.on;
  const worst = anchors.map(() => 0);
  const ids = loads.families
    .filter((family) => family.side === side)
    .flatMap(({ corners, inner }) => [...corners, ...inner()]);
  for (const times of stiffnessTimes.values) {
    const springs = anchors.map(
      ({ along, stiffness, toward }): RailSupport => ({
        kind: "anchor",
        x: Math.min(rail.length, Math.max(0, along + middle)),
        stiffness: times * stiffness * toward[2] ** 2,
      }),
    );
    const solver = new RailSolver(rail, stations, [...ground, ...springs]);
    for (const id of new Set(ids)) {
      const outcome = solver.solve(0, loads.forces(id));
      if (outcome !== "held") return null;
      anchors.forEach(({ toward }, at) => {
        const pull = (solver.reactions[ground.length + at] ?? Number.NaN) / toward[2];
        worst[at] = Math.max(worst[at] ?? Number.NaN, pull);
      });
    }
  }
  return worst;
}
