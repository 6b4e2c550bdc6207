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
  "A pull entered for an anchor is taken as entered. One rated by pull tests, theory or class holds only for the ground as it was told. A label rating is no capacity in this ground.",
];

/** What is not checked, and said so wherever a result stands. */
export const notChecked: readonly string[] = [
  "snow, ice",
  "tornado and downburst cores, debris, flood, earthquake",
  "fatigue, corrosion, film tearing and flutter",
  "animals against the frame, people on the frame, towing shocks, public use",
  "strength of hoops, stubs, bolts, welds, purlins, end walls and cover",
  "strength of rails and cross members under the pull of anchors and the weight of ballast",
  "links of an anchor (tether, eye, attachment to the rail) that are not given",
  "anchors set in old holes, worn or rusted",
  "loosening of anchors by many gusts, beyond the factor of 0.8 on a test pulled once",
  "what sliding and torsion add to one anchor's share: they act in the all-at-once check only",
  "bumps and hollows under the rails: the ground is taken as flat",
  "a slope to the side while dragging, ploughing of the skid noses, ruts, stones and stumps",
];
