import type { System } from "@hoopstay/core";
import harrowBrook from "../../../../fixtures/houses/harrow-brook.yaml?raw";
import lindMeadow from "../../../../fixtures/houses/lind-meadow.yaml?raw";
import hillTop from "../../../../fixtures/sites/hill-top.yaml?raw";
import lindPasture from "../../../../fixtures/sites/lind-meadow-pasture.yaml?raw";
import paddock from "../../../../fixtures/sites/sheltered-paddock.yaml?raw";
import type { FileName, Texts } from "../engine/messages.ts";

export interface Example {
  readonly title: string;
  readonly texts: Texts;
  readonly names: Readonly<Record<FileName, string>>;
  readonly system: System;
}

/** Invented houses to start from. */
export const examples: readonly Example[] = [
  {
    title: "18 ft by 40 ft, round hoops, in a low paddock",
    texts: { house: harrowBrook, site: paddock },
    names: { house: "harrow-brook.yaml", site: "sheltered-paddock.yaml" },
    system: "us",
  },
  {
    title: "The same house on the brow of a hill",
    texts: { house: harrowBrook, site: hillTop },
    names: { house: "harrow-brook.yaml", site: "hill-top.yaml" },
    system: "us",
  },
  {
    title: "5.4 m by 12 m, pointed hoops, in metres",
    texts: { house: lindMeadow, site: lindPasture },
    names: { house: "lind-meadow.yaml", site: "lind-meadow-pasture.yaml" },
    system: "si",
  },
];
