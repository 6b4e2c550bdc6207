import { type Drawings, show } from "@hoopstay/core";
import { usedAt } from "../ask/lookup.ts";
import { system } from "../session/state.ts";
import { Dimension, Figure } from "./figure.tsx";

const width = 400;

/** The house from its right side: hoops, rail, noses and the side that rolls up. */
export function SideDrawing({ drawn }: { readonly drawn: Drawings }) {
  const { hoopStations, length: long, rise, springing, railDepth } = drawn;
  const { railFront, railBack, noseFront, noseBack } = drawn;
  const top = springing + rise;
  const whole = railFront + railBack + noseFront + noseBack;
  const scale = Math.min(350 / whole, 150 / top);
  const ground = 26 + top * scale;
  const middle = width / 2 - ((railFront + noseFront - railBack - noseBack) / 2) * scale;
  const x = (along: number): number => middle + along * scale;
  const y = (up: number): number => ground - up * scale;
  const size = (value: number): string => show(value, "length", system.value);
  const [first = 0, second = 0] = hoopStations;
  const last = hoopStations.at(-1) ?? 0;
  const open = {
    length: usedAt("house", "roll_up_sides.right.length") ?? 0,
    height: usedAt("house", "roll_up_sides.right.height") ?? 0,
  };
  return (
    <Figure
      title="From its right side, to scale; front on the right"
      says={`${hoopStations.length} hoops over ${size(long)}, ${size(second - first)} apart.`}
      width={width}
      height={ground + 62}
    >
      <path class="g" d={`M10,${ground}H${width - 10}`} />
      {open.length > 0 ? (
        <rect
          class="open"
          x={x(-open.length / 2)}
          y={y(springing + open.height)}
          width={open.length * scale}
          height={open.height * scale}
        />
      ) : null}
      {hoopStations.map((at) => (
        <path key={at} class="o" d={`M${x(at)},${ground}V${y(top)}`} />
      ))}
      <path class="o" d={`M${x(first)},${y(top)}H${x(last)}`} />
      <path
        class="r"
        d={`M${x(-railBack - noseBack)},${y(railDepth)}L${x(-railBack)},${ground}H${x(railFront)}L${x(railFront + noseFront)},${y(railDepth)}z`}
      />
      <Dimension
        from={[x(first), y(top) - 8]}
        to={[x(second), y(top) - 8]}
        words={size(second - first)}
      />
      <Dimension
        from={[x(first), ground + 24]}
        to={[x(last), ground + 24]}
        words={`${hoopStations.length} hoops, ${size(long)}`}
      />
      <Dimension
        from={[x(-railBack), ground + 48]}
        to={[x(railFront), ground + 48]}
        words={`rail bears ${size(railFront + railBack)}`}
      />
    </Figure>
  );
}
