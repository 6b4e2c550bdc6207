/** New text in place of what stands from `from` up to `to`. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export const insertion = (at: number, text: string): Splice => ({ from: at, to: at, text });
export const deletion = (from: number, to: number): Splice => ({ from, to, text: "" });

/** The text with all splices made; none may overlap another. */
export function spliced(text: string, splices: readonly Splice[]): string {
  let made = "";
  let done = 0;
  for (const { from, to, text: by } of [...splices].sort((a, b) => a.from - b.from)) {
    made += text.slice(done, from) + by;
    done = to;
  }
  return made + text.slice(done);
}
