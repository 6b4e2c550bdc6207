/** Longest text compared, characters; a longer one is no designation. */
export const longestName = 60;

/**
 * A size's name without what does not matter: case, spaces, the sign for "by", the dash, inch
 * marks, leading and trailing zeros of decimals, `schedule` written out.
 *
 * @param name designation as typed
 * @returns text to compare
 * @example plainName(" hss 1.90 × .120 ") // "hss1.9x0.12"
 */
export function plainName(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[×✕*]/g, "x")
    .replace(/[‐-―−]/g, "-")
    .replace(/["″”']/g, "")
    .replace(/(\d)\s+(?=\d+\s*[/⁄]\s*\d)/g, "$1-")
    .replace(/⁄/g, "/")
    .replace(/\s/g, "")
    .replace(/schedule/g, "sch")
    .replace(/(?<![\d.])\.(?=\d)/g, "0.")
    .replace(/(\.\d*?)0+(?!\d)/g, "$1")
    .replace(/\.(?!\d)/g, "");
}
