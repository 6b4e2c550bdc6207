import { type Drawings, measured, type PlanMark, type ZonePressure } from "@hoopstay/core";
import { arcPointAt, type Shell, type WindCase, type Zone } from "@hoopstay/load";
import type { Evaluation, LoadSet } from "./evaluate.ts";
import { directionOf, insideOf, setOf } from "./words.ts";

const steps = 24;

function sectionLine(shell: Shell): { x: number; z: number }[] {
  const right = Array.from({ length: steps + 1 }, (_, index) => {
    const { x, z } = arcPointAt(shell.arc, index / steps);
    return { x, z: z + shell.springing };
  });
  const left = right.slice(0, -1).map(({ x, z }) => ({ x: -x, z }));
  const half = shell.b / 2;
  return [{ x: -half, z: 0 }, ...left, ...right.slice().reverse(), { x: half, z: 0 }];
}

/** The line of the section between two of its points, sampled along the arc. */
function lineBetween(shell: Shell, zone: Zone, sense: 1 | -1): { x: number; z: number }[] {
  const whole = sectionLine(shell);
  const [from, to] = [zone.a, zone.b];
  if (zone.part !== "arch") return [from, to].map(({ x, z }) => ({ x: sense * x, z }));
  const between = whole.filter(({ x, z }) => x > from.x && x < to.x && z >= shell.springing);
  return [from, ...between, to].map(({ x, z }) => ({ x: sense * x, z }));
}

/** Everything the drawings need; the pressures are those of the worst case across the ridge. */
export function drawingsOf(evaluation: Evaluation, set: LoadSet, index: number): Drawings {
  const { house, shell, site, pressure, takeOff } = evaluation;
  const { rail, lines } = house;
  const windCase = set.table.cases[index] as WindCase;
  const across = windCase.across ?? set.surfaces.across[0]?.[0] ?? null;
  const zones: ZonePressure[] = (across?.set?.zones ?? []).map((zone) => ({
    name: zone.name,
    line: lineBetween(shell, zone, across?.sense ?? 1),
    pressure: pressure * (zone.coefficient - windCase.inside),
  }));
  const shown = { ...windCase, across };
  const title = `wind ${directionOf(shown)}, ${setOf(shown)}, inside ${insideOf(windCase)}`;
  const marks: PlanMark[] = [
    ...house.anchors.map(
      (anchor): PlanMark => ({
        kind: "anchor",
        name: anchor.name,
        x: anchor.x,
        y: anchor.y,
        toward: [anchor.toward[0], anchor.toward[1]],
        value: measured(anchor.pull, "force"),
      }),
    ),
    ...house.ballast.map(
      (block): PlanMark => ({
        kind: "ballast",
        name: block.fixed ? block.what : `${block.what} (loose: counts nothing)`,
        x: block.x,
        y: block.y,
        toward: [0, 0],
        value: measured(block.weight, "force"),
      }),
    ),
    {
      kind: "weight",
      name: "centre of the low weight",
      x: takeOff.low.x,
      y: takeOff.low.y,
      toward: [0, 0],
      value: measured(takeOff.low.W, "force"),
    },
  ];
  return {
    sectionLine: sectionLine(shell),
    span: lines.span,
    rise: lines.rise,
    length: lines.length,
    springing: shell.springing,
    railDepth: rail.depth,
    railWidth: rail.width,
    railFront: rail.front,
    railBack: rail.back,
    noseFront: rail.noseFront,
    noseBack: rail.noseBack,
    hoopStations: Array.from(
      { length: lines.hoopCount },
      (_, hoop) => -lines.length / 2 + hoop * house.spacing,
    ),
    pressures: { title, zones },
    marks,
    frontBearing: site.frontBearing,
  };
}
