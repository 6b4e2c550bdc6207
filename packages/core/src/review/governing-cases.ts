import type { GoverningCheck } from "./review.ts";

/** The case of a check's ratio, and that of its code speed where it is another. */
export function governingCases(
  { from, codeSpeed }: Pick<GoverningCheck, "from" | "codeSpeed">,
  combination: "ASD" | "LRFD",
): string {
  const of = from.ratio[combination].id;
  const limited = Number.isFinite(codeSpeed[combination]);
  const speedOf = limited ? from.codeSpeed[combination].id : of;
  return of === speedOf ? of : `${of}, speed ${speedOf}`;
}
