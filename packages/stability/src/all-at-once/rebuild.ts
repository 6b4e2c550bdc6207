import { type Basis, standsAtCap } from "./basis.ts";
import { capAt, columnAt } from "./joint-system.ts";

/** Computes a basis' inverse and what stands at the caps anew, free of the rounding of exchanges. */
export function rebuild({ system, members, inverse, standing, atCaps }: Basis): void {
  const rows = members.length;
  const width = 2 * rows;
  const work = new Float64Array(rows * width);
  for (let of = 0; of < rows; of += 1) {
    const member = members[of] as number;
    work[of * width + rows + of] = 1;
    if (member < 0) work[of * width + of] = 1;
    else {
      const column = columnAt(system, member);
      for (let row = 0; row < rows; row += 1) work[row * width + of] = column[row] as number;
    }
  }
  for (let step = 0; step < rows; step += 1) clear(work, rows, step);
  for (let row = 0; row < rows; row += 1) {
    inverse.set(work.subarray(row * width + rows, (row + 1) * width), row * rows);
  }
  atCaps.fill(0);
  for (let tether = 0; tether < system.caps.length; tether += 1) {
    if (standing[tether] !== standsAtCap) continue;
    const column = columnAt(system, tether);
    for (let row = 0; row < rows; row += 1) {
      atCaps[row] = (atCaps[row] as number) + capAt(system, tether) * (column[row] as number);
    }
  }
}

/** One step of Gauss and Jordan's elimination, the largest pivot brought to its row first. */
function clear(work: Float64Array, rows: number, step: number): void {
  const width = 2 * rows;
  let best = step;
  for (let row = step + 1; row < rows; row += 1) {
    const [one, most] = [work[row * width + step] as number, work[best * width + step] as number];
    if (Math.abs(one) > Math.abs(most)) best = row;
  }
  const line = work.slice(best * width, (best + 1) * width);
  work.copyWithin(best * width, step * width, (step + 1) * width);
  const pivot = line[step] as number;
  for (let at = 0; at < width; at += 1) work[step * width + at] = (line[at] as number) / pivot;
  for (let row = 0; row < rows; row += 1) {
    const share = work[row * width + step] as number;
    if (row === step || share === 0) continue;
    for (let at = step; at < width; at += 1) {
      const own = work[row * width + at] as number;
      work[row * width + at] = own - share * (work[step * width + at] as number);
    }
  }
}
