import { crossSection } from "../drawing/cross-section.ts";
import { marksTable } from "../drawing/marks-table.ts";
import { plan } from "../drawing/plan.ts";
import { sideView } from "../drawing/side-view.ts";
import type { Matter } from "./sheet.ts";

/** The drawings, each to one scale of its own. */
export const drawings = ({ review, system }: Matter): string =>
  `<p>Each drawing is to one scale, the same both ways. Sizes are centre lines of the hoops.
Arrows toward a surface push on it, arrows away from it pull.</p>
${crossSection(review.drawings, system)}
${sideView(review.drawings, system)}
${plan(review.drawings, system)}
${marksTable(review.drawings.marks, system)}`;
