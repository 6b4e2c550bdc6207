/** Cautions that stand with every result. */
export const cautions: readonly string[] = [
  "This is not a sealed design. Consult a licensed engineer before anyone relies on it.",
  "The local building authority's rules come first.",
  "Working gust: the real gust at which allowable values are reached. Act well before it, at three quarters of it: forecasts miss gusts.",
  "One storm survived is not a rating. A bent or rusted frame voids this result.",
  "Nobody inside or downwind in a storm.",
  "Locate buried services before any anchor is set.",
  "No welding on galvanised tube without ventilation and removal of the zinc.",
  "In cold air (-10 C) a gust loads 9 % more than the standard's air density assumes.",
  "Anchors count here with the allowable pull that was entered; a label rating is no capacity in this ground.",
];

/** What is not checked, and said so wherever a result stands. */
export const notChecked: readonly string[] = [
  "snow, ice",
  "tornado and downburst cores, debris, flood, earthquake",
  "fatigue, corrosion, film tearing and flutter",
  "animals against the frame, people on the frame, towing shocks, public use",
  "strength of hoops, stubs, bolts, welds, rails, purlins, end walls and cover",
  "what the ground gives the anchors",
  "load cases 2 and 4 (torsion): computed and listed in the JSON, but no single check feels torsion",
  "an uneven ground contact, and all tethers, contact and friction at once",
];
