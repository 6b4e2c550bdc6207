import { type Drawings, show } from "@hoopstay/core";
import { usedAt } from "../ask/lookup.ts";
import { system } from "../session/state.ts";
import { Dimension, Figure, points } from "./figure.tsx";

const width = 400;

/** How far from the middle the hoop is at a height, m; null above its crown. */
function reachAt({ sectionLine }: Drawings, height: number): number | null {
  const right = sectionLine.filter(({ x }) => x >= 0);
  const above = right.findLastIndex(({ z }) => z >= height);
  const [one, other] = [right[above], right[above + 1]];
  if (!one) return null;
  if (!other || one.z === other.z) return one.x;
  return one.x + ((one.z - height) / (one.z - other.z)) * (other.x - one.x);
}

/** The hoop on its rails, with ties and boards at their heights and the sizes asked for. */
export function HoopDrawing({ drawn }: { readonly drawn: Drawings }) {
  const { sectionLine, span, rise, springing, railDepth, railWidth } = drawn;
  const top = springing + rise;
  const scale = Math.min(250 / span, 190 / top);
  const ground = 34 + top * scale;
  const x = (across: number): number => width / 2 - 42 + across * scale;
  const y = (up: number): number => ground - up * scale;
  const length = (value: number): string => show(value, "length", system.value);
  const half = span / 2;
  const levels = (["collar_ties.height", "hip_boards.height"] as const).flatMap((key) => {
    const height = usedAt("house", key);
    const reach = height === null ? null : reachAt(drawn, height);
    return height === null || reach === null ? [] : [{ key, height, reach }];
  });
  const stub = usedAt("house", "stubs.length") ?? 0;
  return (
    <Figure
      title="A hoop on its rails, to scale"
      says={`Span ${length(span)}, rise ${length(rise)}, crown ${length(top)} above the ground.`}
      width={width}
      height={ground + 48}
    >
      <path class="g" d={`M10,${ground}H${width - 10}`} />
      {[-half, half].map((at) => (
        <g key={at}>
          <rect
            class="r"
            x={x(at - railWidth / 2)}
            y={y(railDepth)}
            width={railWidth * scale}
            height={railDepth * scale}
          />
          <path class="stub" d={`M${x(at)},${y(railDepth)}V${y(railDepth + stub)}`} />
        </g>
      ))}
      <polyline class="o" points={points(sectionLine.map((at) => [x(at.x), y(at.z)]))} />
      {levels.map(({ key, height, reach }) => (
        <g key={key}>
          {key === "collar_ties.height" ? (
            <path class="tie" d={`M${x(-reach)},${y(height)}H${x(reach)}`} />
          ) : (
            [-1, 1].map((side) => (
              <rect
                key={side}
                class="f"
                x={x(side * reach) - 3}
                y={y(height) - 5}
                width={6}
                height={10}
              />
            ))
          )}
          <text class="m h s" x={x(0)} y={y(height) - 4}>
            {key === "collar_ties.height" ? `tie at ${length(height)}` : ""}
          </text>
        </g>
      ))}
      <Dimension
        from={[x(-half), ground + 30]}
        to={[x(half), ground + 30]}
        words={`span ${length(span)}`}
      />
      <Dimension
        from={[x(half) + 24, y(springing)]}
        to={[x(half) + 24, y(top)]}
        words={`rise ${length(rise)}`}
      />
      <Dimension
        from={[x(half) + 24, ground]}
        to={[x(half) + 24, y(springing)]}
        words={length(springing)}
      />
      <text class="m h s" x={x(0)} y={y(top) - 8}>
        crown {length(top)}
      </text>
    </Figure>
  );
}
