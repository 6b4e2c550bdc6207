/** Formulas that no row reaches, with the reason. */
export const unreached: Readonly<Record<string, string>> = {};
