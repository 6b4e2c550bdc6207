import { measured, type Words } from "@hoopstay/core";
import type { Tube } from "@hoopstay/section";
import type { House } from "../model/house-model.ts";

/** Whether one round tube goes into another; tubes of other shapes are not judged. */
function goesInto(inner: Tube, outer: Tube): boolean {
  if (inner.kind !== "round" || outer.kind !== "round") return true;
  return inner.outside <= outer.outside - 2 * outer.wall;
}

/** How the hoop's foot and its stub go together. */
export type HoopFit = "over the stub" | "into the stub" | "neither";

export function hoopFit(hoop: Tube, stub: Tube): HoopFit {
  if (goesInto(stub, hoop)) return "over the stub";
  return goesInto(hoop, stub) ? "into the stub" : "neither";
}

/** Judged: play that grows by less is not worth a word, m. */
const littlePlay = 0.001;

const loose = ": whether that is too loose is not checked.";

/** Free width between the inner tube and the outer one, m; null where they are not both round. */
function playOf(hoop: Tube, stub: Tube): number | null {
  if (hoop.kind !== "round" || stub.kind !== "round") return null;
  const [inner, outer] = hoopFit(hoop, stub) === "over the stub" ? [stub, hoop] : [hoop, stub];
  return outer.outside - 2 * outer.wall - inner.outside;
}

/** How the hoop now stands on its stub, and with what play, where that is not as today. */
function footWords(house: House, today: House): Words[] {
  const [now, before] = [house, today].map(({ links: { hoop, stub } }) => ({
    fit: hoopFit(hoop.tube, stub.tube),
    play: playOf(hoop.tube, stub.tube),
  })) as [Foot, Foot];
  if (now.fit === "neither")
    return [["The hoop fits neither over the stub nor into it: the stubs must change too."]];
  const play: Words =
    now.play === null ? ["play that is not known"] : [measured(now.play, "length", 2), " of play"];
  if (now.fit !== before.fit)
    return [[`The hoop now goes ${now.fit}, not as today, with `, ...play, loose]];
  if (now.play === null || before.play === null || now.play < before.play + littlePlay) return [];
  const then = measured(before.play, "length", 2);
  return [[`The hoop goes ${now.fit} with `, ...play, ", today ", then, loose]];
}

interface Foot {
  readonly fit: HoopFit;
  readonly play: number | null;
}

const counted = [
  ["collar ties", "collar_ties.count"],
  ["truss bars", "truss_bars.count"],
  ["knee braces", "knee_braces.count"],
] as const;

const countOf = ({ parts }: House, what: string): number =>
  parts.reduce(
    (sum, part) => (part.kind === "bar" && part.what === what ? sum + part.count : sum),
    0,
  );

/** What a change leaves behind: feet that no longer fit, bars that were one to each hoop. */
export function fitFindings(house: House, today: House): Words[] {
  const findings = footWords(house, today);
  const [hoops, before] = [house.lines.hoopCount, today.lines.hoopCount];
  if (hoops === before) return findings;
  for (const [what, key] of counted) {
    const [now, then] = [countOf(house, what), countOf(today, what)];
    if (then > 0 && now === then && then % before === 0) {
      findings.push([
        `${then} ${what} as today, though there are ${hoops} hoops in place of ${before}: change ${key} too where every hoop has its own.`,
      ]);
    }
  }
  return findings;
}
