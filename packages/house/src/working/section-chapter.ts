import { Chapter, taken } from "@hoopstay/core";
import { elasticConstants } from "@hoopstay/strength";
import { steelOfTube } from "../chain/steel.ts";
import type { LinkParts } from "../model/link-parts.ts";
import type { SteelTube } from "../model/steel-tube.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { sectionSteps } from "./section-steps.ts";

/** Id of the chapter on sections and steel. */
export const sectionsId = "X";

function tubesOf(links: LinkParts): [string, SteelTube | null][] {
  return [
    ["hoop", links.hoop],
    ...links.joints.map(({ how, piece }): [string, SteelTube | null] => [`${how} joint`, piece]),
    ["stub", links.stub],
    ["rail", links.rail],
    ["cross members", links.crossMembers],
    ["corner braces", links.cornerBraces],
    ["ties", links.ties],
    ["truss bars", links.trussBars],
    ["knee braces", links.kneeBraces],
    ["ridge", links.ridge],
    ["purlins", links.purlins],
    ["end braces", links.endBraces],
  ];
}

/** Strength and stiffness of a steel as the checks take it. */
function steelSteps(chapter: Chapter, piece: SteelTube): void {
  const { yieldStrength, tensileStrength, modulus, citation, words } = steelOfTube(piece);
  const strength = (symbol: string, name: string, value: number) =>
    chapter.work(taken(words, "steel", symbol, name, value, "pressure", citation), []);
  strength("F_y", "yield strength", yieldStrength);
  strength("F_u", "tensile strength", tensileStrength);
  const family = Object.values(elasticConstants).find((one) => one.modulus.value === modulus);
  if (family) chapter.work(family.modulus, []);
}

/** Section properties and steel of every tube and bar of the load path, each once. */
export function sectionChapter({ house }: Evaluation): Chapter {
  const chapter = new Chapter(sectionsId, "Sections and steel of the load path");
  const alike = new Map<string, { piece: SteelTube; of: string[] }>();
  for (const [what, piece] of tubesOf(house.links)) {
    if (piece === null) continue;
    const { tube, steel } = piece;
    const key = JSON.stringify([tube, steel]);
    const known = alike.get(key) ?? { piece: { tube, steel }, of: [] };
    alike.set(key, known);
    if (!known.of.includes(what)) known.of.push(what);
  }
  for (const { piece, of } of alike.values()) {
    const from = chapter.steps.length;
    sectionSteps(chapter, piece.tube);
    steelSteps(chapter, piece);
    const step = chapter.steps[from];
    if (step) chapter.steps[from] = { ...step, note: of.join(", ") };
  }
  return chapter;
}
