import { choice, count, keys, optional, place, yes } from "./field.ts";
import { quantity } from "./quantity.ts";
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
  grade: optional(choice(boltGrades, "strength class on the bolt's head")),
  threads: optional(
    choice(["in the plane", "clear"], "whether the thread lies where hoop and stub meet"),
  ),
  axis: optional(choice(["along", "across"], "way the bolt runs: along the house, or across it")),
  first: optional(length("lowest bolt, from the rail's top face up")),
  spacing: optional(length("bolt to bolt")),
  edge: optional(length("end of the tube to the middle of the nearest bolt")),
  washers: optional(yes("washers under head and nut")),
});

export const weld = keys({
  leg: length("leg of the fillet weld"),
  electrode: optional(quantity("pressure", "strength of the weld metal")),
});

/** What is known of a plate's steel. */
export const plateSteel = {
  grade: optional(choice(["A36"], "steel of the plates")),
  yield: optional(quantity("pressure", "yield strength by the mill certificate")),
  tensile: optional(quantity("pressure", "tensile strength by the mill certificate")),
};

/** A place where two lengths of hoop tube are joined. */
export const hoopJoint = keys({
  how: choice(["swaged", "coupled"], "one end drawn in, or a sleeve"),
  along: length("along the tube, from the left foot"),
  tube: optional(tubeSchema),
});

/** A bar by its two ends on the right-hand side; the left-hand one is its mirror image. */
export const barEnds = {
  from: optional(place("its lower or outer end")),
  to: optional(place("its upper or inner end")),
};

export const clamps = keys({
  slip: force("allowable force along the purlin that a clamp holds, as rated by its maker"),
});

export const boardFixing = {
  fixing: optional(keys({ allowable: force("allowable pull of the fixing to each hoop") })),
};

export const lockChannel = keys({
  allowable: optional(quantity("force-per-length", "allowable pull of film out of the channel")),
  screw_spacing: optional(length("screw to screw")),
  screw_allowable: optional(force("allowable pull of one screw")),
});

export const studs = keys({
  thickness: length("dressed thickness"),
  width: length("dressed width, in line with the wind"),
  spacing: length("stud to stud"),
  wood: optional(
    choice(["spruce-pine-fir", "southern-pine", "douglas-fir-larch", "hem-fir"], "kind of wood"),
  ),
  fixing: optional(keys({ allowable: force("allowable pull of a stud's fixing at one end") })),
});
