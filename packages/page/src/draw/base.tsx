import { type Drawings, show } from "@hoopstay/core";
import { usedAt, valueAt } from "../ask/lookup.ts";
import { system } from "../session/state.ts";
import { Dimension, Figure } from "./figure.tsx";
import { planOf } from "./plan.ts";
import { PlanRails } from "./plan-rails.tsx";

/** The base from above, front on top: rails, hoops, cross members, weights that ride on it. */
export function BaseDrawing({ drawn }: { readonly drawn: Drawings }) {
  const { span, railFront, railBack, hoopStations, marks } = drawn;
  const plan = planOf(drawn, []);
  const { x, y, width, height } = plan;
  const half = span / 2;
  const size = (value: number): string => show(value, "length", system.value);
  const count = usedAt("house", "cross_members.count") ?? 0;
  const told = valueAt("house", ["cross_members", "at"]);
  const evenly = Array.from(
    { length: count },
    (_, place) => -railBack + ((railFront + railBack) * place) / Math.max(1, count - 1),
  );
  const members = Array.isArray(told)
    ? told.flatMap((_, place) => usedAt("house", `cross_members.at.${place}`) ?? [])
    : evenly;
  const weights = marks.filter(({ kind }) => kind === "weight");
  return (
    <Figure
      title="The base from above, to scale; front on top"
      says={`Rails ${size(span)} apart and ${size(railFront + railBack)} long, ${count} cross members.`}
      width={width}
      height={height}
    >
      {hoopStations.map((at) => (
        <path key={at} class="g" d={`M${x(-half)},${y(at)}H${x(half)}`} />
      ))}
      {members.map((at) => (
        <path key={at} class="tie" d={`M${x(-half)},${y(at)}H${x(half)}`} />
      ))}
      <PlanRails drawn={drawn} plan={plan} />
      {weights.map(({ name, x: across, y: along }) => (
        <g key={name}>
          <circle class="o" cx={x(across)} cy={y(along)} r={6} />
          <text class="m h s" x={x(across)} y={y(along) - 9}>
            {name}
          </text>
        </g>
      ))}
      <Dimension from={[x(-half), height - 14]} to={[x(half), height - 14]} words={size(span)} />
      <Dimension
        from={[x(half) + 24, y(-railBack)]}
        to={[x(half) + 24, y(railFront)]}
        words={size(railFront + railBack)}
      />
    </Figure>
  );
}
