import { type RoofForce, sumAcross, sumAlong, type Zone } from "../resultant/zone.ts";
import type { Shell } from "../shell/shell.ts";
import { outline, type QuarterReading } from "../shell/zones.ts";
import { alongStretches, lightSuction } from "./along-ridge.ts";
import { centreHalf, leewardQuarter, windwardRows } from "./arched-roof.ts";
import { gustFactor } from "./constants.ts";
import { freeRoofAcross, freeRoofAlong, freeRoofSets } from "./free-roof.ts";
import { leewardWall, windwardWall } from "./walls.ts";

/** One set of outside coefficients on arch and strips, with what it adds up to. */
export interface RoofLoad {
  readonly id: string;
  readonly words: string;
  /** How the quarters are read; null where the set knows no quarters. */
  readonly reading: QuarterReading | null;
  readonly zones: readonly Zone[];
  readonly force: RoofForce;
}

const readings: readonly QuarterReading[] = ["arc", "span"];
const G = gustFactor.value;

/** Across the ridge, arched-roof table: every row by both readings of the quarter. */
export function archedAcross(shell: Shell, only?: QuarterReading): RoofLoad[] {
  const { riseRatio, springing, f } = shell;
  const rows = windwardRows(riseRatio, springing / f);
  const centre = centreHalf.evaluate(riseRatio);
  const leeward = leewardQuarter.evaluate();
  return readings
    .filter((reading) => only === undefined || reading === only)
    .flatMap((reading) =>
      rows.map((row) => {
        const windward = row.coefficient.evaluate(riseRatio);
        const zones = acrossZones(shell, reading, windward, centre, leeward);
        return { id: row.id, words: row.words, reading, zones, force: sumAcross(zones) };
      }),
    );
}

/** Across the ridge with the house open: the free-roof rows on the half spans. */
export function freeAcross(shell: Shell): RoofLoad[] {
  return freeRoofSets.map(({ id, words }, set) => {
    const { windward, leeward } = freeRoofAcross(shell.riseRatio, set);
    const zones = halfSpanZones(shell, windward, leeward);
    return { id, words, reading: null, zones, force: sumAcross(zones) };
  });
}

/** Along the ridge, covered: suction by stretches, and the light second value. */
export function coveredAlong(shell: Shell): RoofLoad[] {
  const stretches = alongStretches(shell.h / shell.L);
  const everywhere = [
    { name: "roof", from: 0, to: Number.POSITIVE_INFINITY, coefficient: lightSuction },
  ];
  return [
    along(shell, "along", "parallel to ridge", stretches),
    along(shell, "along-light", "parallel to ridge, -0.18", everywhere),
  ];
}

/** Along the ridge with the house open. */
export function freeAlong(shell: Shell): RoofLoad[] {
  return freeRoofSets.map(({ id, words }, set) => {
    const [near, middle, far] = freeRoofAlong[set] as readonly [number, number, number];
    return along(shell, id, words, [
      { name: "roof to h", from: 0, to: 1, coefficient: near },
      { name: "roof h to 2h", from: 1, to: 2, coefficient: middle },
      { name: "roof beyond 2h", from: 2, to: Number.POSITIVE_INFINITY, coefficient: far },
    ]);
  });
}

type CornerPair = readonly [Zone["a"], Zone["b"]];

function zone(
  shell: Shell,
  name: string,
  part: Zone["part"],
  [a, b]: CornerPair,
  shapeCoefficient: number,
): Zone {
  const half = shell.L / 2;
  const coefficient = G * shapeCoefficient;
  return { name, part, a, b, from: -half, to: half, shapeCoefficient, coefficient };
}

function strips(shell: Shell, at: ReturnType<typeof outline>): [Zone, Zone] {
  const lee = leewardWall.evaluate(shell.b / shell.L);
  const windward: CornerPair = [at.windwardGround, at.windwardSpring];
  const leeward: CornerPair = [at.leewardSpring, at.leewardGround];
  return [
    zone(shell, "windward strip", "windward strip", windward, windwardWall.value),
    zone(shell, "leeward strip", "leeward strip", leeward, lee),
  ];
}

function acrossZones(
  shell: Shell,
  reading: QuarterReading,
  windward: number,
  centre: number,
  leeward: number,
): Zone[] {
  const at = outline(shell, reading);
  const [first, last] = strips(shell, at);
  return [
    first,
    zone(shell, "windward quarter", "arch", [at.windwardSpring, at.windwardQuarter], windward),
    zone(shell, "centre half", "arch", [at.windwardQuarter, at.leewardQuarter], centre),
    zone(shell, "leeward quarter", "arch", [at.leewardQuarter, at.leewardSpring], leeward),
    last,
  ];
}

function halfSpanZones(shell: Shell, windward: number, leeward: number): Zone[] {
  const at = outline(shell, "span");
  const [first, last] = strips(shell, at);
  return [
    first,
    zone(shell, "windward half", "arch", [at.windwardSpring, at.crown], windward),
    zone(shell, "leeward half", "arch", [at.crown, at.leewardSpring], leeward),
    last,
  ];
}

function along(
  shell: Shell,
  id: string,
  words: string,
  stretches: readonly { name: string; from: number; to: number; coefficient: number }[],
): RoofLoad {
  const at = outline(shell, "span");
  const half = shell.L / 2;
  const zones: Zone[] = [];
  for (const { name, from, to, coefficient } of stretches) {
    const start = Math.min(half, -half + from * shell.crown);
    const end = Math.min(half, -half + to * shell.crown);
    if (end <= start) continue;
    zones.push({
      name,
      part: "arch",
      a: at.windwardSpring,
      b: at.leewardSpring,
      from: start,
      to: end,
      shapeCoefficient: coefficient,
      coefficient: G * coefficient,
    });
  }
  return { id, words, reading: null, zones, force: sumAlong(zones) };
}
