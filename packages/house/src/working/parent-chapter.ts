import { Chapter, derived, sumOf, taken } from "@hoopstay/core";
import {
  alongRidgeCitation,
  alongZoneLength,
  archedRows,
  attachedBoxDrag,
  bareTubeDrag,
  boxForce,
  centreHalf,
  type DirectedLoad,
  dragForce,
  type EndsPresent,
  endWallForce,
  filmFriction,
  freeRoofCitation,
  freeWallDrag,
  gustFactor,
  leewardQuarter,
  leewardWall,
  leverMoment,
  outsideCoefficient,
  type RoofLoad,
  sideWall,
  throughDrag,
  windwardWall,
  type Zone,
  zoneDrag,
  zoneDragMoment,
  zoneUplift,
  zoneUpliftMoment,
} from "@hoopstay/load";
import { bareArea, bareDragOf, faceOf } from "../model/bar-face.ts";
import { frameBars } from "../model/frame-parts.ts";
import type { Evaluation } from "../review/evaluate.ts";

/** What a wind along one axis adds up to, N and N m, downwind and tipping downwind positive. */
export interface ParentWork {
  /** Its chapter. */
  readonly id: string;
  readonly drag: number;
  readonly archDrag: number;
  /** Toward the front, wind across only. */
  readonly side: number;
  readonly uplift: number;
  readonly dragMoment: number;
  readonly upliftMoment: number;
}

type Axis = "across" | "along";

/** The working of one parent load: every zone, end wall and box of it. */
export function parentChapter(
  evaluation: Evaluation,
  id: string,
  title: string,
  axis: Axis,
  directed: DirectedLoad,
  ends: EndsPresent,
): { chapter: Chapter; work: ParentWork } {
  const chapter = new Chapter(id, title, ["Q", "G"]);
  const sums = new Sums(chapter);
  const { set } = directed;
  if (set) zones(evaluation, chapter, sums, axis, set);
  else bareTubes(evaluation, sums, axis, ends);
  if (set) endWalls(evaluation, sums, axis, directed, ends);
  boxes(evaluation, sums, axis, set !== null);
  return { chapter, work: sums.close() };
}

type Kind = Exclude<keyof ParentWork, "id">;

const measures: Record<Kind, "force" | "moment"> = {
  drag: "force",
  archDrag: "force",
  side: "force",
  uplift: "force",
  dragMoment: "moment",
  upliftMoment: "moment",
};
const symbols: Record<Kind, [string, string]> = {
  drag: ["H", "downwind force"],
  archDrag: ["H_arch", "of it on the arch"],
  side: ["F_side", "side force toward the front"],
  uplift: ["V_e", "uplift of outside pressure"],
  dragMoment: ["M_H", "tipping moment, horizontal part"],
  upliftMoment: ["M_V", "tipping moment, vertical part"],
};

/** Terms as they are worked, added up at the end as steps of their own. */
class Sums {
  private readonly terms: Record<Kind, { symbol: string; value: number }[]> = {
    drag: [],
    archDrag: [],
    side: [],
    uplift: [],
    dragMoment: [],
    upliftMoment: [],
  };

  constructor(readonly chapter: Chapter) {}

  add(kind: Kind, symbol: string, value: number): void {
    this.terms[kind].push({ symbol, value });
  }

  /** A horizontal force and its moment. */
  push(name: string, value: number, height: number): void {
    this.add("drag", `H_${name}`, value);
    const moment = this.chapter.work(leverMoment, [value, height], { symbol: `M_${name}` });
    this.add("dragMoment", `M_${name}`, moment);
  }

  close(): ParentWork {
    const total = (kind: Kind): number => {
      const terms = this.terms[kind];
      if (terms.length === 0) return 0;
      const [symbol, name] = symbols[kind];
      const measure = measures[kind];
      const list = terms.map((term) => ({ symbol: term.symbol, name: "", measure }));
      const formula = sumOf(`sum-${kind}`, symbol, name, measure, list, derived("sum"));
      return this.chapter.work(
        formula,
        terms.map((term) => term.value),
      );
    };
    return {
      id: this.chapter.id,
      drag: total("drag"),
      archDrag: total("archDrag"),
      side: total("side"),
      uplift: total("uplift"),
      dragMoment: total("dragMoment"),
      upliftMoment: total("upliftMoment"),
    };
  }
}

/** C_p or C_N of a zone as a step of its own, from the table it is read from. */
function coefficient(
  evaluation: Evaluation,
  chapter: Chapter,
  set: RoofLoad,
  zone: Zone,
  mark: string,
): number {
  const { shell } = evaluation;
  const as = { symbol: `C_${mark}`, note: zone.name };
  const arched = archedRows.find((row) => row.id === set.id);
  if (zone.name === "windward strip") return chapter.work(windwardWall, [], as);
  if (zone.name === "leeward strip") return chapter.work(leewardWall, [shell.b / shell.L], as);
  if (arched && zone.name === "windward quarter") {
    return chapter.work(arched.coefficient, [shell.riseRatio], as);
  }
  if (arched && zone.name === "centre half") return chapter.work(centreHalf, [shell.riseRatio], as);
  if (arched && zone.name === "leeward quarter") return chapter.work(leewardQuarter, [], as);
  const citation = set.id.startsWith("along") ? alongRidgeCitation : freeRoofCitation;
  const symbol = set.id.startsWith("along") ? "C_p" : "C_N";
  const read = taken(
    "read from the table of the figure",
    "read",
    symbol,
    zone.name,
    zone.shapeCoefficient,
    "ratio",
    citation,
  );
  return chapter.work(read, [], as);
}

function zones(
  evaluation: Evaluation,
  chapter: Chapter,
  sums: Sums,
  axis: Axis,
  set: RoofLoad,
): void {
  set.zones.forEach((zone, index) => {
    const mark = String(index + 1);
    const cp = coefficient(evaluation, chapter, set, zone, mark);
    const p = pressureOn(evaluation, chapter, cp, mark);
    const length =
      axis === "along" ? stretchOf(evaluation, chapter, zone, mark) : zone.to - zone.from;
    const { a, b } = zone;
    if (axis === "across") {
      const drag = chapter.work(zoneDrag, [p, length, a.z, b.z], { symbol: `H_${mark}` });
      sums.add("drag", `H_${mark}`, drag);
      if (zone.part === "arch") sums.add("archDrag", `H_${mark}`, drag);
      const moment = chapter.work(zoneDragMoment, [p, length, a.z, b.z], { symbol: `M_${mark}` });
      sums.add("dragMoment", `M_${mark}`, moment);
    }
    if (zone.part !== "arch") return;
    const uplift = chapter.work(zoneUplift, [p, length, a.x, b.x], { symbol: `V_${mark}` });
    sums.add("uplift", `V_${mark}`, uplift);
    const lever =
      axis === "across"
        ? chapter.work(zoneUpliftMoment, [p, length, a.x, b.x], { symbol: `M_V${mark}` })
        : chapter.work(leverMoment, [uplift, -(zone.from + zone.to) / 2], { symbol: `M_V${mark}` });
    sums.add("upliftMoment", `M_V${mark}`, lever);
  });
}

/** Length of a zone along the ridge, laid out from the windward end. */
function stretchOf(
  { shell }: Evaluation,
  chapter: Chapter,
  { from, to }: Zone,
  mark: string,
): number {
  const { crown, L } = shell;
  const [near, far] = [(from + L / 2) / crown, (to + L / 2) / crown];
  return chapter.work(alongZoneLength, [near, far, crown, L], { symbol: `l_${mark}` });
}

function pressureOn(evaluation: Evaluation, chapter: Chapter, cp: number, mark: string): number {
  const { site, factors } = evaluation;
  const gcp = chapter.work(outsideCoefficient, [gustFactor.value, cp], { symbol: `GC_${mark}` });
  const { edition } = site.place;
  const { kz, kzt, kd, ke } = factors;
  const velocity = edition.velocityPressure.evaluate(kz, kzt, kd, ke, site.mapSpeed);
  const note = "outside pressure; the inside part stands on a line of its own";
  return chapter.work(edition.pressure, [velocity, kd, gcp, 0], { symbol: `p_${mark}`, note });
}

function endWalls(
  evaluation: Evaluation,
  sums: Sums,
  axis: Axis,
  { sense }: DirectedLoad,
  ends: EndsPresent,
): void {
  const { shell, pressure } = evaluation;
  const { chapter } = sums;
  if (axis === "along" && !ends.front && !ends.back) {
    const { height } = throughDrag(shell);
    const hoops = [shell.hoopCount, shell.hoopLine, shell.hoopDiameter] as const;
    const area = chapter.work(bareArea, hoops, { symbol: "A_frame", note: "hoops" });
    chapter.work(bareTubeDrag, []);
    const drag = chapter.work(dragForce, [pressure, bareTubeDrag.value, area], {
      symbol: "H_frame",
      note: "every hoop, wind through the house",
    });
    sums.push("frame", drag, height);
    const film = shell.hoopLine * shell.L;
    const friction = chapter.work(dragForce, [pressure, filmFriction.value, film], {
      symbol: "H_film",
      note: "friction on both faces of the film",
    });
    sums.push("film", friction, height);
    return;
  }
  for (const end of ["front", "back"] as const) {
    if (!ends[end]) continue;
    const normal = end === "front" ? 1 : -1;
    const windward = normal !== sense;
    const as = { symbol: `C_${end}` };
    const cp =
      axis === "across"
        ? chapter.work(sideWall, [], as)
        : windward
          ? chapter.work(windwardWall, [], as)
          : chapter.work(leewardWall, [shell.L / shell.b], as);
    const p = pressureOn(evaluation, chapter, cp, end);
    const force = chapter.work(endWallForce, [normal, p, shell.endArea], { symbol: `F_${end}` });
    if (axis === "across") sums.add("side", `F_${end}`, force);
    else sums.push(end, sense * force, shell.endCentroid);
  }
}

function boxes(evaluation: Evaluation, sums: Sums, axis: Axis, covered: boolean): void {
  evaluation.house.obstacles.forEach((box, index) => {
    if (covered && !box.outside) return;
    const name = `box${index + 1}`;
    const area = axis === "across" ? box.areaAcross : box.areaAlong;
    const inputs = [evaluation.pressure, gustFactor.value, attachedBoxDrag.value, area] as const;
    const force = sums.chapter.work(boxForce, inputs, { symbol: `H_${name}` });
    sums.push(name, force, box.z);
  });
}

function bareTubes(evaluation: Evaluation, sums: Sums, axis: Axis, ends: EndsPresent): void {
  const { house, shell, pressure } = evaluation;
  const { chapter } = sums;
  const bars = frameBars(house.parts);
  for (const drag of new Set(bars.map(({ tube }) => bareDragOf(tube)))) {
    chapter.work(drag, [], {
      note: "on the whole face of every one: no gust factor, no shielding, no uplift",
    });
  }
  bars.forEach(({ what, count, length, tube, z }, index) => {
    const mark = `t${index + 1}`;
    const area = chapter.work(bareArea, [count, length, faceOf(tube)], {
      symbol: `A_${mark}`,
      note: what,
    });
    const drag = chapter.work(dragForce, [pressure, bareDragOf(tube).value, area], {
      symbol: `H_${mark}`,
    });
    sums.push(mark, drag, z);
  });
  if (axis === "across") return;
  for (const end of ["front", "back"] as const) {
    if (!ends[end]) continue;
    chapter.work(freeWallDrag, [], { symbol: `C_${end}` });
    const wall = chapter.work(dragForce, [pressure, freeWallDrag.value, shell.endArea], {
      symbol: `H_${end}`,
      note: "end wall left standing",
    });
    sums.push(end, wall, shell.endCentroid);
  }
}
