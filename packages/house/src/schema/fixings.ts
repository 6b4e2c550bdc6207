import * as z from "zod";
import { count, keys, place, quantity, yes } from "./field.ts";
import { tubeSchema } from "./tube.ts";

const length = (about: string) => quantity("length", about);
const force = (about: string) => quantity("force", about);

/** Strength classes of bolts, weakest first. */
export const boltGrades = [
  "A307",
  "SAE 2",
  "SAE 5",
  "SAE 8",
  "A325",
  "ISO 4.6",
  "ISO 5.6",
  "ISO 8.8",
] as const;

export const footBolts = keys({
  count: count("bolts in each foot"),
  diameter: length("diameter"),
  grade: z.enum(boltGrades).meta({ description: "strength class on the bolt's head" }).optional(),
  threads: z
    .enum(["in the plane", "clear"])
    .meta({ description: "whether the thread lies where hoop and stub meet" })
    .optional(),
  axis: z
    .enum(["along", "across"])
    .meta({ description: "way the bolt runs: along the house, or across it" })
    .optional(),
  first: length("lowest bolt, from the rail's top face up").optional(),
  spacing: length("bolt to bolt").optional(),
  edge: length("end of the tube to the middle of the nearest bolt").optional(),
  washers: yes("washers under head and nut").optional(),
});

export const weld = keys({
  leg: length("leg of the fillet weld"),
  electrode: quantity("pressure", "strength of the weld metal").optional(),
});

/** What is known of a plate's steel. */
export const plateSteel = {
  grade: z.enum(["A36"]).meta({ description: "steel of the plates" }).optional(),
  yield: quantity("pressure", "yield strength by the mill certificate").optional(),
  tensile: quantity("pressure", "tensile strength by the mill certificate").optional(),
};

/** A place where two lengths of hoop tube are joined. */
export const hoopJoint = keys({
  how: z.enum(["swaged", "coupled"]).meta({ description: "one end drawn in, or a sleeve" }),
  along: length("along the tube, from the left foot"),
  tube: tubeSchema.optional(),
});

/** A bar by its two ends on the right-hand side; the left-hand one is its mirror image. */
export const barEnds = {
  from: place("its lower or outer end").optional(),
  to: place("its upper or inner end").optional(),
};

export const clamps = keys({
  slip: force("allowable force along the purlin that a clamp holds, as rated by its maker"),
});

export const boardFixing = {
  fixing: keys({ allowable: force("allowable pull of the fixing to each hoop") }).optional(),
};

export const lockChannel = keys({
  allowable: quantity("force-per-length", "allowable pull of film out of the channel").optional(),
  screw_spacing: length("screw to screw").optional(),
  screw_allowable: force("allowable pull of one screw").optional(),
});

export const studs = keys({
  thickness: length("dressed thickness"),
  width: length("dressed width, in line with the wind"),
  spacing: length("stud to stud"),
  wood: z
    .enum(["spruce-pine-fir", "southern-pine", "douglas-fir-larch", "hem-fir"])
    .meta({ description: "kind of wood" })
    .optional(),
  fixing: keys({ allowable: force("allowable pull of a stud's fixing at one end") }).optional(),
});
