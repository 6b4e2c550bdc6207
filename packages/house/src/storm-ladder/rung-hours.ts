import { cite, type RungId } from "@hoopstay/core";

/** Where the hours are from: nobody measured them. */
export const hoursCitation = cite(
  "common-practice",
  "hours for two people with their tools at hand, house of two or three car lengths; no source",
  "judgement",
);

/** Hours that each action of the ladder takes, low and high. */
export const rungHours: Readonly<Record<RungId, { readonly low: number; readonly high: number }>> =
  {
    "end-walls": { low: 1, high: 4 },
    close: { low: 0.25, high: 1 },
    tighten: { low: 0.5, high: 2 },
    add: { low: 2, high: 8 },
    people: { low: 0, high: 0.5 },
    animals: { low: 0.5, high: 3 },
    strip: { low: 1, high: 4 },
    leave: { low: 0, high: 0.5 },
  };
