import { Chapter, cite, formula, sumOf } from "@hoopstay/core";
import {
  asce716,
  directionality,
  elevationFactor,
  hillDistanceFactor,
  hillFactor,
  hillHeightFactor,
  zoneDrag,
  zoneUplift,
} from "@hoopstay/load";
import {
  contactForce,
  demandOf,
  linearLimit,
  overturning,
  resistanceOf,
} from "@hoopstay/stability";

const modulus = formula({
  id: "sample-modulus",
  symbol: "S",
  name: "elastic section modulus",
  measure: "section-modulus",
  arguments: [
    ["I", "second moment of area", "second-moment"],
    ["D", "outside diameter", "length"],
  ],
  expression: "2 * I / D",
  citation: cite("roark-7", "table A.1", "read"),
  evaluate: (inertia, diameter) => (2 * inertia) / diameter,
});

/** Velocity pressure, with a hill. */
function windChapter(): Chapter {
  const chapter = new Chapter("W", "Wind pressure at mean roof height");
  const kz = chapter.work(asce716.exposureCoefficient, [4.572, 274.32, 9.5]);
  const ke = chapter.work(elevationFactor, [310]);
  chapter.work(directionality, []);
  const k2 = chapter.work(hillDistanceFactor, [-40, 1.5, 120]);
  const k3 = chapter.work(hillHeightFactor, [3, 2.1, 120]);
  const kzt = chapter.work(hillFactor, [0.29, k2, k3]);
  const q = chapter.work(asce716.velocityPressure, [kz, kzt, 0.85, ke, 46.9392]);
  chapter.work(asce716.pressure, [q, 0.85, -0.9, 0.55], { note: "crown, most suction" });
  return chapter;
}

/** One zone after another, to make the working as long as a real one. */
function zoneChapter(zones: number): Chapter {
  const chapter = new Chapter("Z", "Zones of the arch, wind from the left");
  const terms = Array.from({ length: 6 }, (_, place) => ({
    symbol: `F_${place + 1}`,
    name: `zone ${place + 1}`,
    measure: "force" as const,
  }));
  const total = sumOf("sample-total", "F_x", "sum of zones", "force", terms, zoneDrag.citation);
  for (let place = 0; place < zones; place += 1) {
    const [low, high] = [place / zones, (place + 1) / zones];
    chapter.work(zoneDrag, [-740 + 13 * place, 9.144, low, high], { symbol: `F_x,${place + 1}` });
    chapter.work(zoneUplift, [-740 + 13 * place, 9.144, -high, low], { symbol: "F_z case 3" });
  }
  chapter.work(total, [120, -340.5, 55.125, 9, -0.25, 1e-7]);
  return chapter;
}

function checkChapter(): Chapter {
  const chapter = new Chapter("T", "Tipping over the right rail");
  const moment = chapter.work(overturning, [1, 0, 310, 5200.5, 4100, 2.7432]);
  const demand = chapter.work(demandOf, [0.6, moment, 0]);
  const held = chapter.work(resistanceOf, [3400, 11200]);
  chapter.work(linearLimit, [held, 0, 0.6, demand / 900]);
  chapter.work(contactForce, [2400, 0.6, 5100]);
  chapter.work(modulus, [8.1e-8, 0.0422]);
  return chapter;
}

export const sampleChapters = (zones = 65): Chapter[] => [
  windChapter(),
  zoneChapter(zones),
  checkChapter(),
];
