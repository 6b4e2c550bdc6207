import type { Words } from "@hoopstay/core";
import type { Tube } from "@hoopstay/section";
import { hoopFit } from "../../compare/fit-findings.ts";
import type { House } from "../../model/house-model.ts";
import type { TubeInput } from "../../schema/tube.ts";

/** A tube that a part could be made of. */
export interface TubeChoice {
  readonly input: TubeInput;
  readonly tube: Tube;
  readonly name: string;
}

/** Everything a search looks through: each hoop tube in each number on each rail on each layout. */
export interface DesignRange {
  /** Whether the house file says nothing of it. */
  readonly assumed: boolean;
  readonly hoops: readonly TubeChoice[];
  readonly counts: readonly number[];
  readonly rails: readonly TubeChoice[];
  /** Anchors of one kind on each rail; null leaves them as they are fitted. */
  readonly anchors: { readonly kind: string; readonly perRail: readonly number[] } | null;
  readonly findings: readonly Words[];
}

const least = (tube: Tube): number =>
  tube.kind === "round"
    ? tube.outside
    : tube.kind === "rectangular"
      ? tube.width
      : Number.POSITIVE_INFINITY;

/** Whether hoops stand on the stubs of today's house as they do today. */
export const standsOnStub = ({ links }: House, { tube }: TubeChoice): boolean =>
  hoopFit(tube, links.stub.tube) === hoopFit(links.hoop.tube, links.stub.tube);

/** Whether a rail is as wide as the stubs that stand on it. */
export const carriesStub = ({ links }: House, { tube }: TubeChoice): boolean =>
  least(tube) >= least(links.stub.tube) - 1e-9;

const names = (choices: readonly TubeChoice[]): string =>
  choices.map(({ name }) => name).join("; ");

/** A range without what does not fit the stubs of today's house, and words about what is left out. */
export function fittingRange(range: DesignRange, house: House): DesignRange {
  const hoops = range.hoops.filter((choice) => standsOnStub(house, choice));
  const rails = range.rails.filter((choice) => carriesStub(house, choice));
  const findings: Words[] = [...range.findings];
  const out = (all: readonly TubeChoice[], kept: readonly TubeChoice[]) =>
    all.filter((choice) => !kept.includes(choice));
  const [noHoop, noRail] = [out(range.hoops, hoops), out(range.rails, rails)];
  if (noHoop.length > 0) {
    findings.push([
      `Left out, for they do not stand on the stubs as today's hoops do: ${names(noHoop)}.`,
    ]);
  }
  if (noRail.length > 0) {
    findings.push([`Left out, for the stubs are wider than these rails: ${names(noRail)}.`]);
  }
  return { ...range, hoops, rails, findings };
}

/** How many designs a range holds. */
export const designsIn = ({ hoops, counts, rails, anchors }: DesignRange): number =>
  hoops.length * counts.length * rails.length * (anchors?.perRail.length ?? 1);
