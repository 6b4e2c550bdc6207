import * as is from "./definition.ts";
import type { Dimension, System } from "./dimension.ts";
import { power } from "./power.ts";

/** A unit: the symbol shown, how many SI units it holds, its family, and the spellings read. */
export interface Unit {
  readonly symbol: string;
  readonly factor: number;
  readonly system: System;
  /** The first is the one named in lists. */
  readonly spellings: readonly string[];
  /** The number is a rise over a run, so its angle is the arctangent of number x factor. */
  readonly slope?: true;
}

const unit =
  (system: System) =>
  (symbol: string, factor: number, spellings = symbol): Unit => ({
    symbol,
    factor,
    system,
    spellings: spellings.split(" "),
  });
const us = unit("us");
const si = unit("si");

/** The closed list of units. A "·" in a spelling is also read as "-", "*" or a space. */
export const units: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    us("in", is.INCH, `in in. inch inches "`),
    us("ft", is.FOOT, "ft ft. foot feet '"),
    us("yd", is.YARD, "yd yard yards"),
    us("mi", is.MILE, "mi mile miles"),
    us("mil", is.INCH / 1000, "mil mils"),
    si("mm", 1 / 1000, "mm millimetre millimetres millimeter millimeters"),
    si("cm", 1 / 100, "cm centimetre centimetres centimeter centimeters"),
    si("m", 1, "m metre metres meter meters"),
    si("km", 1000, "km kilometre kilometres kilometer kilometers"),
  ],
  area: [
    us("in²", is.INCH ** 2, "in2 sqin"),
    us("ft²", is.FOOT ** 2, "ft2 sqft"),
    us("yd²", is.YARD ** 2, "yd2 sqyd"),
    si("mm²", 1e-6, "mm2"),
    si("cm²", 1e-4, "cm2"),
    si("m²", 1, "m2 sqm"),
  ],
  volume: [
    us("gal", is.GALLON, "gal gallon gallons"),
    us("in³", power(is.INCH, 3), "in3 cuin"),
    us("ft³", power(is.FOOT, 3), "ft3 cuft"),
    us("yd³", power(is.YARD, 3), "yd3 cuyd"),
    si("L", is.LITRE, "l L litre litres liter liters"),
    si("m³", 1, "m3"),
  ],
  speed: [
    us("mph", is.MILE / is.HOUR, "mph mi/h mile/hour miles/hour"),
    us("ft/s", is.FOOT, "ft/s fps"),
    us("kt", is.NAUTICAL_MILE / is.HOUR, "kt kts knot knots"),
    si("km/h", 1000 / is.HOUR, "km/h kmh kph"),
    si("m/s", 1),
  ],
  force: [
    us("lb", is.POUND_FORCE, "lb lb. lbs lbs. lbf pound pounds"),
    us("kip", is.KIP, "kip kips"),
    si("N", 1, "N newton newtons"),
    si("kN", 1000),
    si("kg", is.KILOGRAM_FORCE, "kg kgf kilogram kilograms"),
  ],
  moment: [
    us("lb·ft", is.POUND_FORCE * is.FOOT, "lb·ft ft·lb lbf·ft ft·lbf lbs·ft ft·lbs"),
    us("lb·in", is.POUND_FORCE * is.INCH, "lb·in in·lb lbf·in in·lbf lbs·in in·lbs"),
    us("kip·ft", is.KIP * is.FOOT, "kip·ft ft·kip"),
    us("kip·in", is.KIP * is.INCH, "kip·in in·kip"),
    si("N·m", 1, "N·m Nm"),
    si("kN·m", 1000, "kN·m kNm"),
  ],
  "force-per-length": [
    us("lb/ft", is.POUND_FORCE / is.FOOT, "lb/ft lbf/ft lbs/ft plf"),
    us("lb/in", is.POUND_FORCE / is.INCH, "lb/in lbf/in lbs/in"),
    si("N/m", 1),
    si("kN/m", 1000),
    si("N/mm", 1000),
    si("kg/m", is.KILOGRAM_FORCE),
  ],
  pressure: [
    us("psf", is.POUND_FORCE / is.FOOT ** 2, "psf lb/ft2 lbf/ft2 lbs/ft2"),
    us("psi", is.POUND_FORCE / is.INCH ** 2, "psi lb/in2 lbf/in2 lbs/in2"),
    us("ksi", is.KIP / is.INCH ** 2, "ksi kip/in2"),
    us("ksf", is.KIP / is.FOOT ** 2, "ksf kip/ft2"),
    si("Pa", 1, "Pa N/m2"),
    si("kPa", 1000, "kPa kN/m2"),
    si("MPa", 1e6, "MPa N/mm2"),
    si("GPa", 1e9, "GPa"),
  ],
  "mass-per-area": [
    us("oz/yd²", is.OUNCE / is.YARD ** 2, "oz/yd2"),
    us("oz/ft²", is.OUNCE / is.FOOT ** 2, "oz/ft2"),
    us("lb/ft²", is.POUND / is.FOOT ** 2, "lb/ft2 lbs/ft2"),
    si("g/m²", 1 / 1000, "g/m2 gsm"),
    si("kg/m²", 1, "kg/m2"),
  ],
  "unit-weight": [
    us("pcf", is.POUND_FORCE / power(is.FOOT, 3), "pcf lb/ft3 lbs/ft3"),
    si("N/m³", 1, "N/m3"),
    si("kN/m³", 1000, "kN/m3"),
  ],
  density: [us("pcf", is.POUND / power(is.FOOT, 3), "pcf lb/ft3 lbs/ft3"), si("kg/m³", 1, "kg/m3")],
  angle: [
    si("°", is.DEGREE, "deg degree degrees °"),
    si("rad", 1, "rad radian radians"),
    { ...si("%", 1 / 100, "% percent"), slope: true },
  ],
  fraction: [si("%", 1 / 100, "% percent")],
};
