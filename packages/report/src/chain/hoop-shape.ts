import { type DrawnHoop, type System, show } from "@hoopstay/core";
import { apart } from "../drawing/apart.ts";
import { line, polyline } from "../drawing/svg.ts";
import { barLine, type Stage, staged, stageWidth } from "./hoop-stage.ts";

/** The hoop as it stands and as it bends, larger than true by a whole number that is printed. */
export function hoopShape({ points, bars }: DrawnHoop, stage: Stage, system: System): string {
  const moved = points.map(({ dx, dz }) => Math.hypot(dx, dz));
  const most = Math.max(...moved, 0);
  const times = magnification(most * stage.scale);
  const bent = points.map(({ x, z, dx, dz }) =>
    stage.spotOf({ x: x + times * dx, z: z + times * dz }),
  );
  const place = moved.indexOf(most);
  const from = stage.stations[place]?.spot;
  const to = bent[place];
  const words = show(most, "length", system);
  return staged(
    "hoop-shape",
    most === 0
      ? "The hoop does not move"
      : `How the hoop bends, drawn ${times} ${times === 1 ? "time" : "times"} as large as it is`,
    `Dashed: as built. Full: bent. The most it moves is ${words}.`,
    stage,
    [
      polyline(
        stage.stations.map(({ spot }) => spot),
        "dash",
      ),
      ...bars.map((bar) => barLine(bar, stage)),
      polyline(bent, "o"),
      ...(most > 0 && from && to
        ? [
            line(from, to, "a"),
            apart(
              [{ spot: { x: to.x, y: Math.max(14, to.y - 8) }, words: `${words} here`, side: 0 }],
              stageWidth,
            ),
          ]
        : []),
    ],
  );
}

/** The largest of 1, 2, 5, 10, 20, ... that keeps the movement on paper under some pixels. */
function magnification(pixels: number): number {
  let times = 1;
  for (let power = 1; power <= 1e6; power *= 10) {
    for (const step of [1, 2, 5]) if (step * power * pixels <= 32) times = step * power;
  }
  return times;
}
