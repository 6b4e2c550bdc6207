import { type Drawings, show } from "@hoopstay/core";
import { usedAt } from "../ask/lookup.ts";
import { system } from "../session/state.ts";
import { Dimension, Figure } from "./figure.tsx";

const width = 400;

/** One foot of a hoop, seen along the rail: rail, stub in the hoop, bolts. */
export function FootDrawing({ drawn }: { readonly drawn: Drawings }) {
  const { railDepth, railWidth } = drawn;
  const stub = usedAt("house", "stubs.length") ?? 0;
  const [hoopTube, stubTube] = [
    usedAt("house", "hoops.tube.outside") ?? railWidth * 0.7,
    usedAt("house", "stubs.tube.outside") ?? railWidth * 0.55,
  ];
  const shoulder = usedAt("house", "stubs.shoulder") ?? 0;
  const [count, first, spacing] = ["count", "first", "spacing"].map(
    (key) => usedAt("house", `stubs.bolts.${key}`) ?? 0,
  ) as [number, number, number];
  const hoopTop = railDepth + Math.max(stub, shoulder) * 1.35 + 0.05;
  const scale = 210 / hoopTop;
  const ground = 232;
  const x = (across: number): number => 165 + across * scale;
  const y = (up: number): number => ground - up * scale;
  const size = (value: number): string => show(value, "length", system.value);
  const tube = (outside: number, from: number, to: number, kind: string) => (
    <rect
      class={kind}
      x={x(-outside / 2)}
      y={y(to)}
      width={outside * scale}
      height={(to - from) * scale}
    />
  );
  const bolts = Array.from({ length: count }, (_, place) => railDepth + first + place * spacing);
  return (
    <Figure
      title="The foot of a hoop, to scale"
      says={`Stub ${size(stub)} above the rail, ${count} bolts.`}
      width={width}
      height={ground + 20}
    >
      <path class="g" d={`M40,${ground}H300`} />
      {tube(hoopTube, railDepth + shoulder, hoopTop, "o")}
      {tube(stubTube, railDepth, railDepth + stub, "stub-face")}
      {tube(railWidth, 0, railDepth, "r")}
      {bolts.map((at) => (
        <path key={at} class="bolt" d={`M${x(-hoopTube * 0.8)},${y(at)}H${x(hoopTube * 0.8)}`} />
      ))}
      <Dimension
        from={[x(hoopTube) + 26, y(railDepth)]}
        to={[x(hoopTube) + 26, y(railDepth + stub)]}
        words={`stub ${size(stub)}`}
      />
      <Dimension
        from={[x(hoopTube) + 26, ground]}
        to={[x(hoopTube) + 26, y(railDepth)]}
        words={`rail ${size(railDepth)}`}
      />
      <text class="h s" x={8} y={y(hoopTop) + 14}>
        hoop
      </text>
      <text class="h s" x={8} y={y(railDepth + stub / 2)}>
        {count > 0 ? `${count} bolts` : "no bolts told"}
      </text>
    </Figure>
  );
}
