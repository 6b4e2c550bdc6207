import { nice, ticks } from "d3-array";

export type Ends = readonly [from: number, to: number];

const aboutSoManyMarks = 6;

/** From values between two ends, straight to places between two others. */
export function straight([from, to]: Ends, [start, end]: Ends): (value: number) => number {
  return (value) => {
    const share = (value - from) / (to - from);
    return start * (1 - share) + end * share;
  };
}

/** The ends moved outwards to round values. */
export const roundEnds = ([from, to]: Ends): Ends => nice(from, to, aboutSoManyMarks);

/** Round values between the ends, to be marked on an axis. */
export const roundValues = ([from, to]: Ends): number[] => ticks(from, to, aboutSoManyMarks);
