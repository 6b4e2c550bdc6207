import type { House } from "@hoopstay/house";
import { sloping } from "../hold-down/example-house.ts";

export const { house, site } = sloping;
const { links } = house;
const board = { thickness: 0.038, width: 0.14, wood: "spruce-pine-fir" } as const;
const stud = { ...board, spacing: 0.61, fixing: 900 } as const;

/** The example house with ratings and sizes entered that its file leaves out. */
export const fitted: House = {
  ...house,
  links: {
    ...links,
    channel: { allowable: 3000, screwSpacing: 0.3, screwAllowable: 900 },
    baseBoards: { ...board, height: 0.17, fixing: 2000 },
    hipBoards: { ...board, width: 0.089, height: 1.22, fixing: 2000 },
    ridge: links.ridge && { ...links.ridge, slip: 2500 },
    purlins: links.purlins && { ...links.purlins, slip: 2500 },
    studs: { front: stud, back: stud },
  },
};

/** The same with something of its parts changed. */
export const fittedWith = (change: Partial<House["links"]>): House => ({
  ...fitted,
  links: { ...fitted.links, ...change },
});

const brace = links.ridge ?? links.hoop;

/** Two tubes at each end, one on each side, from rail to hoop. */
export const endBraces = { ...brace, count: 4, length: 2.5, height: 2 } as const;
