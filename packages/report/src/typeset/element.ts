/** MathML elements side by side. */
export type Row = readonly string[];

const element = (name: string, ...row: Row): string => `<${name}>${row.join("")}</${name}>`;

/** A row where MathML asks for one element. */
const single = (row: Row): string => (row.length === 1 ? row.join("") : element("mrow", ...row));

export const math = (row: Row): string => element("math", ...row);

/** MathML slants a name of one letter and leaves a longer one upright. */
export const name = (letters: string): Row => [element("mi", letters)];
export const uprightLetter = (letter: string): Row => [`<mi mathvariant="normal">${letter}</mi>`];
export const figures = (digits: string): Row => [element("mn", digits)];
export const sign = (mark: string): Row => [element("mo", mark)];
/** A sign between two terms that starts a row. */
export const infix = (mark: string): Row => [`<mo form="infix">${mark}</mo>`];
export const thinSpace: Row = ['<mspace width=".17em"/>'];
/** Wide enough that two numbers with it between them are not read as one. */
export const argumentComma: Row = ['<mo rspace=".28em">,</mo>'];

export const fraction = (over: Row, under: Row): Row => [
  element("mfrac", single(over), single(under)),
];
export const power = (base: Row, exponent: Row): Row => [
  element("msup", single(base), single(exponent)),
];
export const subscript = (base: Row, below: Row): Row => [
  element("msub", single(base), single(below)),
];
export const root = (row: Row): Row => [element("msqrt", ...row)];

/** A row of its own: its fences grow with it alone, and a sign that comes first binds to the next. */
export const grouped = (...rows: readonly Row[]): Row => [element("mrow", ...rows.flat())];

export const joined = (rows: readonly Row[], between: Row): Row =>
  rows.flatMap((row, place) => (place === 0 ? row : [...between, ...row]));
