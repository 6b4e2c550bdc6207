import { declaredFormulas, type Formula } from "@hoopstay/core";
import * as frame from "@hoopstay/frame";
import * as ground from "@hoopstay/ground";
import * as house from "@hoopstay/house";
import * as load from "@hoopstay/load";
import * as section from "@hoopstay/section";
import * as stability from "@hoopstay/stability";
import * as strength from "@hoopstay/strength";

/** Named as wholes, so that a bundle leaves out nothing that declares a formula. */
const packages = [load, section, ground, frame, strength, stability, house];

/** Every formula and constant that the packages declare. */
export const declared: readonly Formula[] = packages.every(Boolean) ? [...declaredFormulas()] : [];
