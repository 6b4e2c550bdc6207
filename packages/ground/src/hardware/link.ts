import { Refusal } from "@hoopstay/core";

/** The links between the ground and the rail, in the order in which the pull meets them. */
export const linkIds = ["tether", "eye", "attachment"] as const;

export type LinkId = (typeof linkIds)[number];

/** What the owner knows of a link. Only the working load limit, N, counts. */
export interface Link {
  readonly workingLoadLimit?: number;
  /** N; asked for only so that it is not mistaken for the other. */
  readonly breakingLoad?: number;
}

/**
 * Working load limit of a link.
 *
 * @throws Refusal `key-missing` where only a breaking load is given, `not-positive`, or
 *   `sizes-disagree` where the working load limit is above the breaking load
 */
export function workingLoadOf(id: LinkId, { workingLoadLimit, breakingLoad }: Link): number {
  if (workingLoadLimit === undefined) {
    throw refusal(
      "key-missing",
      `the working load limit of the ${id}; a breaking load is never used`,
      "Read the working load limit (WLL, or safe working load) on the tag or in the maker's list; if there is none, use a rated part.",
    );
  }
  if (!(workingLoadLimit > 0 && Number.isFinite(workingLoadLimit))) {
    throw refusal(
      "not-positive",
      `a working load limit of the ${id} above zero`,
      "Give the working load limit as marked.",
    );
  }
  if (breakingLoad !== undefined && !(breakingLoad > workingLoadLimit)) {
    throw refusal(
      "sizes-disagree",
      `a working load limit of the ${id} below its breaking load`,
      "The two may have been exchanged; the smaller is the working load limit.",
    );
  }
  return workingLoadLimit;
}

function refusal(
  code: "key-missing" | "not-positive" | "sizes-disagree",
  expected: string,
  mend: string,
): Refusal {
  return new Refusal([{ code, expected, mend }]);
}
