import { type GroundClue, type GroundSummary, measured, type Words } from "@hoopstay/core";
import type { ReadClue } from "@hoopstay/ground";
import type { Site } from "../model/site-model.ts";

function clueOf({ clue, soilClass }: ReadClue): GroundClue {
  const means = `class ${soilClass}`;
  switch (clue.kind) {
    case "feel":
      return { told: [clue.feel], means };
    case "blow count":
      return { told: [`blow count ${clue.blows}`], means };
    case "probe torque":
      return { told: ["probe ", measured(clue.torque, "moment")], means };
  }
}

const howToTest: Words = [
  "Pull tests: set three anchors of the kind you use, pull each along its tether's line with a scale until it gives way or to twice the pull you need, and write them into pull_tests.",
];
const howToFeel: Words = [
  "How firm the ground is at anchor depth: dig down a spade, press with the thumb, drive a 1/2 in rod (ground.feel); or turn a soil probe (ground.probe).",
];
const sandOrClay: Words = [
  "Sand or clay: does a moist lump roll to a thread (clay) or crumble (sand)? Both are run until you say (ground.like).",
];

/** What is not known of the ground, the most useful first. */
function findOut(site: Site): Words[] {
  const open: Words[] = [];
  const { soil, soilClass, pulls, servicesLocated } = site;
  const presumed = soil.basis === "presumptive";
  if (servicesLocated !== true) {
    open.push(["Buried pipes and cables: have them located before any anchor is set."]);
  }
  if (presumed && soilClass === null) open.push(howToFeel);
  if (presumed && soilClass !== null && soil.likeness === "unknown") open.push(sandOrClay);
  if (pulls.length < 3) open.push(howToTest);
  return open;
}

function groundWords(site: Site): Words {
  const { soil, soilClass, wet, engineer, pulls } = site;
  const state = soil.state.wetness === "frozen" ? "frozen, rated as wet" : wet ? "wet" : "dry";
  const tested = pulls.length > 0 ? ` ${pulls.length} pull tests.` : "";
  if (soil.basis === "theory") {
    const like = `${soil.values.likeness}-like`;
    return [`Values of ${engineer ?? "an engineer"}, ${like}, rated ${state}.${tested}`];
  }
  if (soilClass === null) {
    return [`Class not known: nothing is presumed of it. Rated ${state}.${tested}`];
  }
  const like = soil.likeness === "unknown" ? "sand or clay, the worse" : `${soil.likeness}-like`;
  return [`Soil class ${soilClass}, ${like}, rated ${state}.${tested}`];
}

/** The ground as the anchors are rated in it, and what would be worth knowing. */
export const groundSummary = (site: Site): GroundSummary => ({
  words: groundWords(site),
  clues: site.clues.map(clueOf),
  findOut: findOut(site),
});
