/**
 * Plain questions for keys of the files; `*` stands for any one part. What is not here is asked for
 * by its key and by what the schema says of it.
 */
const asked: Readonly<Record<string, string>> = {
  house: "What do you call the house?",
  "hoops.shape": "What shape are the hoops?",
  "hoops.span": "How wide is it, foot to foot?",
  "hoops.rise": "How high is the crown above the straight legs?",
  "hoops.leg": "How long are the straight legs?",
  "hoops.length": "How long is it, first hoop to last?",
  "hoops.spacing": "How far apart are the hoops?",
  "hoops.count": "Or their number (count)",
  "hoops.tube": "What tube are the hoops bent from?",
  "hoops.centre_offset": "Pointed: how far beyond the middle is each arc's centre?",
  "hoops.joints": "Are hoops pieced together? Where?",
  "stubs.tube": "What tube are the stubs?",
  "stubs.length": "How long is a stub above the rail?",
  "stubs.shoulder": "Gap between rail and hoop, if any?",
  "stubs.bolts": "How is the hoop bolted to the stub?",
  "stubs.weld": "How is the stub welded to the rail?",
  "rails.tube": "What tube are the rails?",
  "rails.length": "How long is a rail where it lies on the ground?",
  "rails.noses": "How far do the upturned noses reach?",
  "rails.splices": "Are the rails spliced?",
  cross_members: "Tubes from rail to rail?",
  corner_braces: "Diagonals in the corners of the base?",
  drawbar: "A drawbar?",
  ridge: "A ridge tube?",
  purlins: "Purlins beside the ridge?",
  end_braces: "Diagonal braces in the end bays?",
  collar_ties: "Collar ties across the hoops?",
  truss_bars: "Bars between tie and hoop?",
  knee_braces: "Braces from hoop to tie?",
  base_boards: "Boards along the rails?",
  hip_boards: "Boards along the hips?",
  end_rails: "Boards across the ends?",
  film: "The cover?",
  "film.layers": "How many layers of film?",
  "film.thickness": "How thick is a layer?",
  "film.removable": "Can the film be stripped before a storm?",
  "film.channel": "Lock channel and its fixing?",
  roll_up_sides: "Do the sides roll up?",
  "roll_up_sides.left": "Left side",
  "roll_up_sides.right": "Right side",
  vents: "Vents?",
  gaps: "Gaps under boards and ends?",
  "end_walls.front": "Front end wall",
  "end_walls.back": "Back end wall",
  "end_walls.*.doors": "Doors?",
  "end_walls.*.doors.*.name": "What do you call it?",
  "end_walls.*.removable": "Can the wall come off while the house stands?",
  bins: "A feed bin or water tank on the rails?",
  fittings: "Roosts, nest boxes, shelves, hurdles?",
  measured_weight: "Was the house weighed?",
  "measured_weight.total": "What does the whole house weigh?",
  anchors: "Anchors fitted now?",
  "anchors.*.name": "Name or number",
  "anchors.*.side": "On which rail?",
  "anchors.*.along": "How far from the middle, front plus?",
  "anchors.*.pull": "Allowable pull, where it is known",
  "anchors.*.kind": "Its kind, of those you could set",
  "anchors.*.angle": "How steep is the tether?",
  "anchors.*.toward": "Where does it lead?",
  ballast: "Ballast on the rails?",
  "ballast.*.fixed": "Made fast on the rails?",
  anchor_kinds: "Which kinds of anchor have you, or could you buy?",
  tractor: "What pulls the house?",
  "tractor.weight": "What does it weigh?",
  "tractor.on_driven_wheels": "How much of it stands on driven wheels?",
  site: "What do you call the place?",
  date: "Day of the visit",
  now: "How is the house left now?",
  front_faces: "Where does the front face?",
  "wind.standard": "Which wind standard?",
  "wind.speed": "What wind speed is given for the place?",
  "wind.basis": "What kind of speed is it?",
  "wind.risk_category": "Risk category of that speed?",
  exposure: "How open is it upwind?",
  upwind_fetch: "For B: how far is it built up or wooded upwind?",
  elevation: "How high above the sea?",
  hill: "Does it stand on or near a hill?",
  slope: "Does the ground slope?",
  "slope.angle": "How steep?",
  "slope.downhill": "Which way does it fall?",
  drag_slope: "Steepest slope on the way of a move?",
  "ground.kind": "What is the ground?",
  "ground.wet": "Is it wet, or may it be?",
  "ground.frozen": "Is it frozen now?",
  "ground.like": "Does it crumble like sand, or roll to a thread like clay?",
  "ground.feel": "What do hand, heel and rod tell, at the anchor's depth?",
  "ground.told_when": "Was it wet or dry when you felt it?",
  services_located: "Have buried pipes and cables been located?",
  pull_tests: "Anchors pulled with a scale?",
  every_anchor_proved: "Is every anchor in use pulled to its proof load?",
  combination: "Method of the verdict",
  quarter_reading: "One reading of the quarters only?",
  prices: "What does steel cost?",
  variants: "Other houses to set beside this one?",
  search: "A range to search through?",
  states: "States of your own?",
  only_these_states: "Check only the states listed here?",
  "*.tube": "What tube?",
  "*.tube.size": "Size by its trade name",
  "*.tube.outside": "Outside across, if round",
  "*.tube.depth": "Depth, upright, if rectangular",
  "*.tube.width": "Width, lying, if rectangular",
  "*.tube.wall": "Wall",
  "*.tube.gauge": "Or: gauge of the wall",
  "*.tube.gauge_table": "Which gauge table?",
  "*.tube.galvanized": "Galvanized?",
  "*.count": "How many?",
};

/** What few ask for is folded away: it has a cautious default, or stands on a certificate. */
const rare = [
  /\.tube\.(standard|grade|yield|tensile)$/,
  /^hoops\.(centre_offset|joints)$/,
  /^stubs\.shoulder$/,
  /^film\.(mass|channel)$/,
  /\.(clamps|fixing|studs|joints|ends)$/,
  /^ground\.(bearing|friction|probe|blow_count|engineer|water_table|frost_depth|soil_class)$/,
  /^measured_weight\.(high|at)$/,
  /^anchor_kinds\.\d+\.(stabiliser|known_scatter|direct|set|tie_setback)$/,
  /^wind\.risk_category$/,
];

/** More than the schema says, where an owner would guess. */
const help: Readonly<Record<string, string>> = {
  "wind.speed":
    "The design speed of the local code for this place: ask the building office. For a real gust, say below that it is one.",
  "wind.risk_category":
    "Ask the building office with the speed. I is for farm buildings the public does not enter (ASCE 7 table 1.5-1, from memory).",
  now: "Such as shut, or one of the states in the answer.",
  "hoops.rise": "From the top of the straight legs to the crown, on the tube's centre line.",
};

/** What is said under a question: its own help, else what the schema says. */
export function helpFor(key: string, about: string): string {
  if (/^anchors\.\d+\.pull$/.test(key)) {
    return "What this anchor may carry in this ground, by pull tests or an engineer. The number on a label is not that. Left out where the kind below tells it.";
  }
  if (/gauge_table$/.test(key)) {
    return "A gauge is no thickness: ask the seller which table it is from.";
  }
  return help[key] ?? about;
}

const matches = (pattern: string, key: string): boolean => {
  const parts = pattern.split(".");
  const own = key.split(".");
  // A pattern that begins with any part may stand at any depth.
  const from = parts[0] === "*" && own.length > parts.length ? own.length - parts.length : 0;
  if (own.length - from !== parts.length) return false;
  return parts.every((part, place) => part === "*" || part === own[from + place]);
};

/** The last part of a key that is no number of an entry. */
const words = (key: string): string =>
  key
    .split(".")
    .findLast((part) => !/^\d+$/.test(part))
    ?.replaceAll("_", " ") ?? "";

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** The question asked for a key, such as hoops.tube.gauge. */
export function questionFor(key: string): string {
  const exact = asked[key];
  if (exact !== undefined) return exact;
  const pattern = Object.keys(asked).find((one) => one.includes("*") && matches(one, key));
  return (pattern && asked[pattern]) || capital(words(key));
}

export const isRare = (key: string): boolean => rare.some((pattern) => pattern.test(key));

/** What the choices of the files mean, where the word alone does not say it. */
const choices: Readonly<Record<string, string>> = {
  "wind.basis design": "design: a strength-level map speed (ASCE 7-10 and later)",
  "wind.basis service": "service: an older map's speed",
  "wind.basis gust": "gust: a real three-second gust",
  "exposure B": "B: built up or wooded for a long way",
  "exposure C": "C: open country, hedges and all",
  "exposure D": "D: open water or flat, bare land",
  "ground.like sand": "it crumbles like sand",
  "ground.like clay": "it rolls to a thread like clay",
};

export const choiceWords = (key: string, option: string): string =>
  choices[`${key} ${option}`] ?? option;
