import type { Drawings } from "@hoopstay/core";
import type { Plan } from "./plan.ts";

/** Both rails on a plan. */
export function PlanRails({
  drawn: { span, railWidth, railFront, railBack },
  plan: { x, y, scale },
}: {
  readonly drawn: Drawings;
  readonly plan: Plan;
}) {
  return (
    <>
      {[-span / 2, span / 2].map((at) => (
        <rect
          key={at}
          class="r"
          x={x(at - railWidth / 2)}
          y={y(railFront)}
          width={Math.max(3, railWidth * scale)}
          height={(railFront + railBack) * scale}
        />
      ))}
    </>
  );
}
