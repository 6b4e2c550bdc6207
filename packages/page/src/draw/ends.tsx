import { type Drawings, show } from "@hoopstay/core";
import { usedAt, valueAt } from "../ask/lookup.ts";
import { system } from "../session/state.ts";
import { Figure, points } from "./figure.tsx";

const width = 400;

/** Both ends as they are seen from outside, with their doors. */
export function EndsDrawing({ drawn }: { readonly drawn: Drawings }) {
  const { sectionLine, span, rise, springing } = drawn;
  const top = springing + rise;
  const scale = Math.min(165 / span, 130 / top);
  const ground = 20 + top * scale;
  return (
    <Figure
      title="Both ends from outside, to scale"
      says="Front on the left, back on the right, each with its doors."
      width={width}
      height={ground + 28}
    >
      {(["front", "back"] as const).map((end, place) => {
        const middle = 100 + 200 * place;
        const x = (across: number): number => middle + across * scale;
        const y = (up: number): number => ground - up * scale;
        const isTold = valueAt("house", ["end_walls", end]) !== undefined;
        const doors = valueAt("house", ["end_walls", end, "doors"]);
        const sizes = (Array.isArray(doors) ? doors : []).flatMap((_, index) => {
          const of = (key: string): number | null =>
            usedAt("house", `end_walls.${end}.doors.${index}.${key}`);
          const [wide, high] = [of("width"), of("height")];
          return wide === null || high === null ? [] : [{ wide, high }];
        });
        const all = sizes.reduce((sum, { wide }) => sum + wide, 0);
        let from = -all / 2;
        return (
          <g key={end}>
            <polyline class="o wall" points={points(sectionLine.map((at) => [x(at.x), y(at.z)]))} />
            {sizes.map(({ wide, high }, index) => {
              const left = from;
              from += wide;
              return (
                <g key={`${index} ${wide}`}>
                  <rect
                    class="open"
                    x={x(left)}
                    y={y(high)}
                    width={wide * scale}
                    height={high * scale}
                  />
                  <text class="m h s" x={x(left + wide / 2)} y={y(high / 2)}>
                    {show(wide, "length", system.value)} x {show(high, "length", system.value)}
                  </text>
                </g>
              );
            })}
            <path class="g" d={`M${middle - 95},${ground}H${middle + 95}`} />
            <text class="m h" x={middle} y={ground + 18}>
              {isTold ? end : `${end}: film, assumed`}
            </text>
          </g>
        );
      })}
    </Figure>
  );
}
