import { describe, expect, it } from "vitest";
import {
  convert,
  type Dimension,
  dimensions,
  figures,
  quantityCodes,
  readQuantity,
  show,
  significant,
  spellingsOf,
  unitOf,
} from "../../packages/core/src/quantity/index.ts";

const inch = 0.0254;
const pound = 0.45359237 * 9.80665;

const accepted: [string | number, Dimension, number][] = [
  ["18 ft", "length", 5.4864],
  ["18 FT", "length", 5.4864],
  ["6 ft 4 in", "length", 76 * inch],
  ["6ft4in", "length", 76 * inch],
  ["6 ft. 4 in.", "length", 76 * inch],
  [`6' 4"`, "length", 76 * inch],
  [`6'-4"`, "length", 76 * inch],
  [`6' - 4"`, "length", 76 * inch],
  ["6\u2032 4\u2033", "length", 76 * inch],
  ["6\u2019\u20114\u201d", "length", 76 * inch],
  [`-6' 4"`, "length", -76 * inch],
  [`6' 4-1/2"`, "length", 76.5 * inch],
  ["6 ft 0 in", "length", 72 * inch],
  ["1-5/8 in", "length", 1.625 * inch],
  ["1 5/8 in", "length", 1.625 * inch],
  ["1\u215d in", "length", 1.625 * inch],
  ["\u00bd in", "length", 0.5 * inch],
  ["3/16 in", "length", 0.1875 * inch],
  ["2.375 in", "length", 2.375 * inch],
  [".5 in", "length", 0.5 * inch],
  ["6 mil", "length", 0.006 * inch],
  ["5.4 m", "length", 5.4],
  ["5.4m", "length", 5.4],
  ["5.4\u00a0m", "length", 5.4],
  ["\u22125.4 m", "length", -5.4],
  ["60.3 mm", "length", 0.0603],
  ["120 sq ft", "area", 120 * 0.3048 ** 2],
  ["120 ft\u00b2", "area", 120 * 0.3048 ** 2],
  ["120 ft^2", "area", 120 * 0.3048 ** 2],
  ["55 gal", "volume", 55 * 231 * inch ** 3],
  ["208 L", "volume", 0.208],
  ["105 mph", "speed", (105 * 5280 * 0.3048) / 3600],
  ["105 miles per hour", "speed", (105 * 5280 * 0.3048) / 3600],
  ["47 m/s", "speed", 47],
  ["90 km/h", "speed", 25],
  ["36 kt", "speed", (36 * 1852) / 3600],
  ["1,200 lb", "force", 1200 * pound],
  ["1,234,567 N", "force", 1234567],
  ["1,234.5 N", "force", 1234.5],
  ["1.2e5 N", "force", 120000],
  ["540 kg", "force", 540 * 9.80665],
  ["5.3 kN", "force", 5300],
  ["2 kips", "force", 2000 * pound],
  ["350 lb-ft", "moment", 350 * pound * 0.3048],
  ["350 ft\u00b7lb", "moment", 350 * pound * 0.3048],
  ["475 N m", "moment", 475],
  ["1.5 plf", "force-per-length", (1.5 * pound) / 0.3048],
  ["16 psf", "pressure", (16 * pound) / 0.3048 ** 2],
  ["16 lb/ft2", "pressure", (16 * pound) / 0.3048 ** 2],
  ["50 ksi", "pressure", (50000 * pound) / inch ** 2],
  ["0.8 kN/m\u00b2", "pressure", 800],
  ["345 MPa", "pressure", 345e6],
  ["16 lb/ft2", "mass-per-area", (16 * 0.45359237) / 0.3048 ** 2],
  ["5 oz/yd2", "mass-per-area", ((5 / 16) * 0.45359237) / 0.9144 ** 2],
  ["170 g/m2", "mass-per-area", 0.17],
  ["145 pcf", "density", (145 * 0.45359237) / 0.3048 ** 3],
  ["5 deg", "angle", (5 * Math.PI) / 180],
  ["5\u00b0", "angle", (5 * Math.PI) / 180],
  ["8 %", "angle", Math.atan(0.08)],
  ["1:12", "angle", Math.atan(1 / 12)],
  ["-1 : 12", "angle", -Math.atan(1 / 12)],
  ["0.1 rad", "angle", 0.1],
  ["30 %", "fraction", 0.3],
  ["30%", "fraction", 0.3],
  ["0.3", "fraction", 0.3],
  [0.3, "fraction", 0.3],
  ["1/3", "fraction", 1 / 3],
];

describe("a quantity is read", () => {
  it.each(accepted)("%j as %s", (text, dimension, value) => {
    const read = readQuantity(text, dimension);
    if (!read.ok) throw new Error(read.mend);
    expect(read.text).toBe(String(text));
    expect(Math.abs(read.value - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-15 * 4);
  });

  it.each(dimensions.flatMap((dimension) => spellingsOf(dimension).map((s) => [dimension, s])))(
    "%s in every listed spelling: %s",
    (dimension, spelling) => {
      expect(readQuantity(`1 ${spelling}`, dimension as Dimension)).toMatchObject({ ok: true });
    },
  );

  it("with factors that are correctly rounded from their definitions", () => {
    expect(readQuantity("1 in", "length")).toMatchObject({ value: 0.0254 });
    expect(readQuantity("1 ft", "length")).toMatchObject({ value: 0.3048 });
    expect(readQuantity("1 yd", "length")).toMatchObject({ value: 0.9144 });
    expect(readQuantity("1 mi", "length")).toMatchObject({ value: 1609.344 });
    expect(readQuantity("1 lb", "force")).toMatchObject({ value: 4.4482216152605 });
    expect(convert(1 / 1000, "volume", "gal")).toBeCloseTo(1 / 3.785411784, 14);
  });
});

const refused: [unknown, Dimension, (typeof quantityCodes)[number], RegExp][] = [
  ["18", "length", "unit-missing", /unit after the number/],
  [18, "length", "unit-missing", /unit after the number/],
  ["1:12", "length", "wrong-dimension", /slope/],
  ["30", "fraction", "unit-missing", /30 % or, as a plain number, 0.3/],
  ["5", "angle", "unit-missing", /unit/],
  ["18 fet", "length", "unit-unknown", /Did you mean 18 ft\?/],
  ["5 M", "length", "unit-unknown", /Did you mean 5 m\?/],
  ["345 mPa", "pressure", "unit-unknown", /Did you mean 345 MPa\?/],
  ["90 KM/H", "speed", "unit-unknown", /Did you mean 90 km\/h\?/],
  ["105 mpg", "speed", "unit-unknown", /Did you mean 105 mph\?/],
  ["18 meteres", "length", "unit-unknown", /Did you mean 18 metres\?/],
  ["6-ft", "length", "unit-unknown", /Did you mean 6 ft\?/],
  ["5_m", "length", "unit-unknown", /Did you mean 5 m\?/],
  ["8 %%", "angle", "not-a-number", /Leave out "%" after 8 %/],
  ["3 cubits", "length", "unit-unknown", /units listed/],
  ["2 tons", "force", "unit-unknown", /listed/],
  ["5 any:ft", "length", "unit-unknown", /listed/],
  ["5 __proto__", "length", "unit-unknown", /listed/],
  ["18 mph", "length", "wrong-dimension", /"mph" measures a speed/],
  ["18 ft2", "length", "wrong-dimension", /an area/],
  ["16 psf", "mass-per-area", "wrong-dimension", /a pressure or a stress/],
  ["30 %", "length", "wrong-dimension", /slope, or a share/],
  ["6 ft 4 in", "speed", "wrong-dimension", /a length/],
  ["N", "force", "not-a-number", /number in figures/],
  ["NaN m", "length", "not-a-number", /figures/],
  ["Infinity m", "length", "not-a-number", /figures/],
  [Number.NaN, "fraction", "not-a-number", /figures/],
  [Number.POSITIVE_INFINITY, "length", "not-a-number", /figures/],
  ["1e999 m", "length", "not-a-number", /size/],
  ["1e308 mi", "length", "not-a-number", /size/],
  ["1e-400 m", "length", "not-a-number", /size/],
  ["about 18 ft", "length", "not-a-number", /figures/],
  ["1.2.3 m", "length", "not-a-number", /one number/],
  ["16-18 ft", "length", "not-a-number", /one number/],
  ["16-18/2 ft", "length", "not-a-number", /one number/],
  ["1 200 m", "length", "not-a-number", /one number/],
  ["3/0 in", "length", "not-a-number", /one number/],
  ["3/1.5 in", "length", "not-a-number", /one number/],
  ["1:0", "angle", "not-a-number", /one number/],
  ["18 ft long", "length", "not-a-number", /Leave out "long" after 18 ft/],
  ["18 ft 3", "length", "not-a-number", /Leave out "3" after 18 ft/],
  ["6'4", "length", "not-a-number", /Leave out "4" after 6 '/],
  ["6 ft 14 in", "length", "not-a-number", /less than 12/],
  ["6.5 ft 4 in", "length", "not-a-number", /whole feet/],
  ["6 ft -4 in", "length", "not-a-number", /Leave out/],
  ["1,5 m", "length", "not-a-number", /comma/],
  ["1,200 m", "length", "not-a-number", /comma/],
  ["1.200,5 m", "length", "not-a-number", /comma/],
  ["0,200 lb", "force", "not-a-number", /comma/],
  ["--5 m", "length", "not-a-number", /one sign/],
  ["+ -5 m", "length", "not-a-number", /one sign/],
  ["", "length", "not-a-number", /Fill in/],
  [" \t", "length", "not-a-number", /Fill in/],
  [null, "length", "not-a-number", /Fill in/],
  [undefined, "length", "not-a-number", /Fill in/],
  [true, "length", "not-a-number", /figures/],
  [["18 ft"], "length", "not-a-number", /figures/],
  [Object.create(null), "length", "not-a-number", /figures/],
];

describe("a quantity is refused", () => {
  it.each(refused)("%j as %s: %s", (given, dimension, code, mend) => {
    const read = readQuantity(given, dimension);
    if (read.ok) throw new Error(`read as ${read.value}`);
    expect(read.code).toBe(code);
    expect(quantityCodes).toContain(read.code);
    expect(read.mend).toMatch(mend);
    expect(read.expected).toContain("units: ");
  });

  it("with every part of the message filled in", () => {
    expect(readQuantity("18 mph", "density")).toEqual({
      ok: false,
      code: "wrong-dimension",
      given: "18 mph",
      expected: "a density, such as 145 pcf or 2300 kg/m3 (units: pcf, kg/m3)",
      mend: '"mph" measures a speed. Use a unit listed.',
    });
  });

  it("with hidden characters made visible and long texts cut", () => {
    expect(readQuantity("18\u202eft", "length")).toMatchObject({ given: "18\\u{202e}ft" });
    const long = readQuantity(`18 ${"x".repeat(1e6)}`, "length");
    expect(long.ok ? 0 : long.given.length + long.mend.length).toBeLessThan(200);
  });
});

describe("a quantity is shown", () => {
  it.each<[number, Dimension, string, string]>([
    [5.4864, "length", "18 ft", "5.49 m"],
    [0.0603, "length", "2.37 in", "60.3 mm"],
    [2.375 * inch, "length", "2.38 in", "60.3 mm"],
    [0.999999 * 0.3048, "length", "1.00 ft", "305 mm"],
    [33 * 0.44704, "speed", "33 mph", "14.8 m/s"],
    [1350, "pressure", "28.2 psf", "1.35 kPa"],
    [345e6, "pressure", "50.0 ksi", "345 MPa"],
    [10720, "force", "2,410 lb", "10.7 kN"],
    [977, "force", "220 lb", "977 N"],
    [-999.6, "force", "-225 lb", "-1.00 kN"],
    [1234567890, "force", "278,000,000 lb", "1230000 kN"],
    [0.17, "mass-per-area", "5.01 oz/yd²", "170 g/m²"],
    [Math.PI / 36, "angle", "5°", "5°"],
    [0.3, "fraction", "30 %", "30 %"],
    [(1.5 * pound) / 0.3048, "force-per-length", "1.5 lb/ft", "21.9 N/m"],
    [(150 * pound) / 0.3048, "force-per-length", "150 lb/ft", "2.19 kN/m"],
    [(110 * pound) / 0.3048 ** 3, "unit-weight", "110 pcf", "17.3 kN/m³"],
    [(2 * pound) / 0.3048 ** 3, "unit-weight", "2 pcf", "314 N/m³"],
    [0, "force", "0 lb", "0 kN"],
    [-0, "length", "0 ft", "0 m"],
  ])("%d as %s", (value, dimension, us, si) => {
    expect(show(value, dimension, "us")).toBe(us);
    expect(show(value, dimension, "si")).toBe(si);
  });

  it("to the figures asked for", () => {
    expect(show(5.4321, "length", "si", 1)).toBe("5 m");
    expect(show(5.4321, "length", "si", 5)).toBe("5.4321 m");
    expect(show(5.401, "length", "si")).toBe("5.40 m");
    expect(significant(1.5e-9, 3)).toBe("1.5e-9");
    expect(significant(1.23456e17, 3)).toBe("1.23e17");
  });

  it("in one unit for a whole column", () => {
    const unit = unitOf("length", "us", 5.4864);
    expect([5.4864, 0.1524].map((value) => figures(value, unit))).toEqual(["18", "0.5"]);
    expect(unitOf("pressure", "us", 345e6).symbol).toBe("ksi");
    expect(unitOf("force", "si")).toMatchObject({ symbol: "kN", factor: 1000 });
  });

  it("never as something that is not a number", () => {
    expect(() => show(Number.NaN, "length", "us")).toThrow(RangeError);
    expect(() => show(1e308, "length", "us")).toThrow(RangeError);
    expect(() => show(1, "length", "us", 0)).toThrow(RangeError);
    expect(() => convert(1, "length", "mph")).toThrow(RangeError);
    expect(convert(Math.atan(0.08), "angle", "%")).toBeCloseTo(8, 12);
  });
});
