import { text } from "../html/escape.ts";
import { list } from "../html/table.ts";

const explained: readonly (readonly [string, string])[] = [
  [
    "shift, all at once",
    "weight, anchors, ground and friction carry one wind together; the house shifts where no share of them is left that balances it. Each other check looks at one way of moving by itself",
  ],
  [
    "load cases 2 and 4",
    "torsion cases of figure 27.3-8. They turn the house in plan, which no single check feels; they run in the check of everything at once, where the letter T ends their name",
  ],
  [
    "load case 3",
    "three quarters of the horizontal forces of both axes; the uplift is kept whole, on the safe side",
  ],
  [
    "reading",
    "the standard's quarters of an arch, taken of the arc's length or of the span; both run, the worse is kept",
  ],
  [
    "set",
    "the rows of coefficients in use: ground and walls are rows of the arched-roof figure (springing from the ground, on walls), clear and obstructed those of an open roof, along the suctions of wind along the ridge, along-light their second value (-0.18 everywhere), bare frame the film off",
  ],
  ["no hold", "nothing resists: the ratio is beyond all bounds"],
  ["ask hoopstay first", "the command hoopstay first checks strength link by link"],
];

/** Words of the sheets that a reader cannot know. */
export const wordsExplained = (): string =>
  `<h3>Words used</h3>\n${list(explained.map(([word, meaning]) => `<b>${text(word)}</b>: ${text(meaning)}.`))}`;
