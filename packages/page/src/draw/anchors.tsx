import { type Drawings, type PlanMark, show } from "@hoopstay/core";
import { system } from "../session/state.ts";
import { Figure } from "./figure.tsx";
import { planOf } from "./plan.ts";
import { PlanRails } from "./plan-rails.tsx";

/** Everything that holds the house, from above, front on top, with the compass where it is known. */
export function AnchorsDrawing({ drawn }: { readonly drawn: Drawings }) {
  const { marks, frontBearing } = drawn;
  const holding = marks.filter(({ kind }) => kind !== "weight");
  const plan = planOf(drawn, holding);
  const { x, y, width, height } = plan;
  return (
    <Figure
      title="What holds it, from above, to scale; front on top"
      says={`${holding.length} anchors and pieces of ballast.`}
      width={width}
      height={height}
    >
      <PlanRails drawn={drawn} plan={plan} />
      {holding.map((mark, place) => (
        <Mark key={`${place} ${mark.name}`} mark={mark} at={[x(mark.x), y(mark.y)]} />
      ))}
      <text class="m h" x={width / 2} y={18}>
        front
      </text>
      <text class="m h" x={width / 2} y={height - 8}>
        back
      </text>
      {frontBearing === null ? null : (
        <g transform={`translate(${width - 34} 36) rotate(${(-frontBearing * 180) / Math.PI})`}>
          <path class="f" d="M0,-18L5,2L0,-2L-5,2z" />
          <path class="dim" d="M0,0V16" />
          <text class="m" x={0} y={-21}>
            N
          </text>
        </g>
      )}
    </Figure>
  );
}

/** A name that has room beside the plan; the whole of it stands in its question. */
const shortened = (name: string): string =>
  name.length > 12 ? `${name.slice(0, 11)}\u2026` : name;

function Mark({
  mark: { kind, name, toward, value },
  at: [x, y],
}: {
  readonly mark: PlanMark;
  readonly at: readonly [number, number];
}) {
  const [right, forward] = toward;
  const left = x < 200;
  const lines = [shortened(name), show(value.value, "force", system.value)];
  const far = Math.hypot(right, forward);
  return (
    <g>
      {kind === "ballast" ? (
        <rect class="o" x={x - 6} y={y - 6} width={12} height={12} />
      ) : (
        <>
          {far > 1e-9 ? (
            <path class="tether" d={`M${x},${y}l${(22 * right) / far},${(-22 * forward) / far}`} />
          ) : null}
          <circle class="f" cx={x} cy={y} r={4.5} />
        </>
      )}
      {lines.map((words, line) => (
        <text
          key={words}
          class={left ? "e h s" : "h s"}
          x={left ? x - 26 : x + 26}
          y={y - 4 + 13 * line}
        >
          {words}
        </text>
      ))}
    </g>
  );
}
