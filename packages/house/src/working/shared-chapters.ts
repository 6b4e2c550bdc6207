import { Chapter, cite, derived, sumOf, taken } from "@hoopstay/core";
import {
  directionality,
  elevationFactor,
  endWallCentroid,
  flatEndArea,
  fromGust,
  fromService,
  gustFactor,
  underArcArea,
  underArcMoment,
  wallNames,
} from "@hoopstay/load";
import { bearingInset } from "@hoopstay/stability";
import type { EvaluatedState, Evaluation } from "../review/evaluate.ts";
import { grossAreas, type HouseState } from "../state/states.ts";
import { arcSteps } from "./arc-steps.ts";
import { factorSteps } from "./factor-steps.ts";
import { hillSteps } from "./hill-steps.ts";
import { mustAgree } from "./must-agree.ts";
import {
  basePressure,
  flooredHeight,
  hoopArc,
  meanRoofHeight,
  openingShare,
  restArea,
  restShare,
  riseRatioOf,
  roofArea,
  shellLength,
  shellRise,
  shellSpan,
  sideWallArea,
  springingHeight,
  springingShare,
} from "./shell-formulas.ts";

/** Sizes of the shell that the wind sees. */
export function shellChapter({ house, shell }: Evaluation): Chapter {
  const { lines, leg } = house;
  const d = lines.hoopDiameter;
  const chapter = new Chapter("G", "Shape the wind sees");
  const b = chapter.work(shellSpan, [lines.span, d]);
  const f = chapter.work(shellRise, [lines.rise, d]);
  const L = chapter.work(shellLength, [lines.length, d]);
  const zs = chapter.work(springingHeight, [lines.springing - leg, leg]);
  chapter.work(riseRatioOf, [f, b]);
  chapter.work(meanRoofHeight, [zs, f]);
  chapter.work(springingShare, [zs, f]);
  const { c, e, R, t0, t1 } = arcSteps(chapter, lines, { b, f, zs });
  const end = chapter.work(flatEndArea, [R, t0, t1, c, b, zs]);
  mustAgree("the end area", end, shell.endArea, shell.endArea);
  const under = chapter.work(underArcArea, [end, b, zs]);
  const moment = chapter.work(underArcMoment, [under, e, R, t0, t1, c]);
  const middle = chapter.work(endWallCentroid, [under, moment, b, zs, end]);
  mustAgree("the middle of an end", middle, shell.endCentroid, shell.endCentroid);
  const arc = chapter.work(hoopArc, [R, t0, t1]);
  chapter.work(sideWallArea, [L, zs, arc]);
  chapter.work(roofArea, [L, arc]);
  return chapter;
}

/** From the speed as given to the pressure that multiplies every bracket. */
export function pressureChapter({ site, shell, factors }: Evaluation): Chapter {
  const chapter = new Chapter("Q", "Velocity pressure", ["G"]);
  const { edition, exposure, elevation, hill } = site.place;
  chapter.work(directionality, []);
  chapter.work(gustFactor, []);
  let speed = site.speed;
  if (site.basis === "gust") speed = chapter.work(fromGust, [site.speed, directionality.value]);
  if (site.basis === "service") speed = chapter.work(fromService, [site.speed]);
  const z = chapter.work(flooredHeight, [shell.h]);
  const note = `exposure ${exposure}; constants: ${edition.exposureCitation.place}`;
  const kz = chapter.work(edition.exposureCoefficient, [z, factors.gradientHeight, factors.alpha], {
    note,
  });
  const kzt = hillSteps(chapter, hill, exposure, shell.h);
  const ke = elevation === undefined ? 1 : chapter.work(elevationFactor, [elevation]);
  const kd = directionality.value;
  chapter.work(edition.velocityPressure, [kz, kzt, kd, ke, speed]);
  const unit = chapter.work(edition.velocityPressure, [kz, kzt, kd, ke, 1], { symbol: "q_u" });
  chapter.work(edition.pressure, [unit, kd, 1, 0], {
    symbol: "q_1",
    note: "K_d q_h at 1 m/s, for a coefficient of 1",
  });
  chapter.work(basePressure, [factors.perSpeedSquared, speed]);
  return chapter;
}

/** Id of the chapter on the openings of a state. */
export const openingsId = (state: string): string => `O-${state}`;

/** What stands open in every wall and the roof. */
function openingSteps(chapter: Chapter, openings: HouseState["openings"]) {
  return ([...wallNames, "roof"] as const).map((part) => {
    const symbol = `a_${part}`;
    const origin = "doors, sides, vents and gaps as entered or assumed; a missing end whole";
    const name = `openings, ${part}`;
    const stands = taken(origin, "openings", symbol, name, openings[part], "area", derived("sum"));
    return { part, symbol, area: chapter.work(stands, []) };
  });
}

/** Which openings decide the enclosure class of a state. */
export function enclosureChapter(
  { shell }: Evaluation,
  { state, enclosure }: EvaluatedState,
): Chapter | null {
  if (!enclosure) return null;
  const title = `Openings: ${state.words}: ${enclosure.kind}`;
  const chapter = new Chapter(openingsId(state.id), title, ["G"]);
  const gross = grossAreas(shell);
  const open = openingSteps(chapter, state.openings);
  for (const wall of enclosure.walls) {
    const symbolOf = (symbol: string) => ({ symbol: `${symbol},${wall.wall}` });
    const rest = open.filter(({ part }) => part !== wall.wall);
    const terms = rest.map(({ symbol }) => ({ symbol, name: "", measure: "area" as const }));
    const others = chapter.work(
      sumOf("rest-openings", "A_oi", "openings of the rest", "area", terms, derived("sum")),
      rest.map(({ area }) => area),
      symbolOf("A_oi"),
    );
    mustAgree("the openings", others, wall.otherOpenings, others + wall.opening);
    if (others > 0) chapter.work(openingShare, [wall.opening, others], symbolOf("k_o"));
    const inputs = [gross.left, gross.front, gross.roof, gross[wall.wall]] as const;
    chapter.work(restArea, inputs, symbolOf("A_gi"));
    chapter.work(restShare, [others, wall.otherGross], symbolOf("k_i"));
  }
  for (const inside of enclosure.insideCoefficients) {
    const citation = cite("bnbc-2020", "figure 6.2.5 (ASCE 7-16 table 26.13-1)", "read");
    const name = `inside coefficient, ${enclosure.kind}`;
    chapter.work(
      taken("read from the table", "inside", "GC_pi", name, inside, "ratio", citation),
      [],
    );
  }
  return chapter;
}

/** Ground, load factors and base lines of the house as it is held. */
export function holdChapter({ house, site, holds }: Evaluation): Chapter {
  const chapter = new Chapter("B", "Ground, load factors, base lines");
  factorSteps(chapter, site);
  for (const hold of holds) {
    const low = hold.holdings[0]?.weight.W ?? 0;
    chapter.work(bearingInset, [low, house.rail.width, site.bearing], { note: hold.words });
  }
  return chapter;
}
