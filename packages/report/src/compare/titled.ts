/** What a house of the comparison is called: today's by its name, a variant with its number. */
export const titled = (name: string, place: number): string =>
  place === 0 ? name : `${place} ${name}`;
