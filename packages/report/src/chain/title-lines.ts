const mostSigns = 52;
const mostLines = 3;

/** A title broken into lines that fit the drawing; what is beyond the last is cut. */
export function titleLines(title: string): string[] {
  const lines: string[] = [];
  for (const word of title.split(" ").flatMap((one) => one.match(/.{1,52}/gsu) ?? [])) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < mostSigns)
      lines.splice(-1, 1, `${last} ${word}`);
    else lines.push(word);
  }
  return lines.length <= mostLines
    ? lines
    : [...lines.slice(0, mostLines - 1), `${lines[mostLines - 1]}\u2026`];
}
