const greek = new Set(
  (
    "alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi pi rho sigma tau " +
    "upsilon phi chi psi omega Gamma Delta Theta Lambda Xi Pi Sigma Phi Psi Omega"
  ).split(" "),
);

const nameShape = /^[A-Za-z]+\d*(_[A-Za-z0-9]+)*(,[A-Za-z0-9]+)*$/;

/** Whether a symbol is a name with subscripts, as the formulas write them: K_zt, p_min,r. */
export const isName = (symbol: string): boolean => nameShape.test(symbol);

/** Inside a subscript `pi` is "internal pressure", and longer words stand upright. */
function part(word: string, subscript: boolean): string {
  if (greek.has(word) && !(subscript && word === "pi")) return `\\${word}`;
  if (word.length === 1 || /^\d+$/.test(word)) return word;
  return `\\mathrm{${word}}`;
}

/** A symbol name as TeX: Greek letters by name, everything after a `_` or a comma below the line. */
export function symbolToTex(symbol: string): string {
  const [base = "", ...below] = symbol.split(/[_,]/);
  const [, letters = "", figures = ""] = /^([A-Za-z]+)(\d*)$/.exec(base) ?? [];
  const subscripts = figures === "" ? below : [figures, ...below];
  const head = part(letters, false);
  if (subscripts.length === 0) return head;
  return `${head}_{${subscripts.map((word) => part(word, true)).join(",")}}`;
}
