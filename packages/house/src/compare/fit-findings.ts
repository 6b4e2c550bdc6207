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
export function fitFindings(house: House, today: House): string[] {
  const findings: string[] = [];
  const { hoop, stub } = house.links;
  const fit = hoopFit(hoop.tube, stub.tube);
  if (fit === "neither") {
    findings.push("The hoop fits neither over the stub nor into it: the stubs must change too.");
  } else if (fit !== hoopFit(today.links.hoop.tube, today.links.stub.tube)) {
    findings.push(`The hoop now goes ${fit}, not as today.`);
  }
  const [hoops, before] = [house.lines.hoopCount, today.lines.hoopCount];
  if (hoops === before) return findings;
  for (const [what, key] of counted) {
    const [now, then] = [countOf(house, what), countOf(today, what)];
    if (then > 0 && now === then && then % before === 0) {
      findings.push(
        `${then} ${what} as today, though there are ${hoops} hoops in place of ${before}: change ${key} too where every hoop has its own.`,
      );
    }
  }
  return findings;
}
