import {
  ballastPieces,
  draggingFrictionHigh,
  draggingFrictionLow,
  grossTractionRatio,
  motionResistanceRatio,
  netTractionRatio,
  slidingPull,
  startingFriction,
  submergedFactor,
  towPull,
  weightOfPiece,
} from "@hoopstay/ground";
import { type Computations, columns, type Given } from "../published/given.ts";

const degree = Math.PI / 180;

const atWheel = (given: Given) => [given.number("mobility"), given.number("slip")] as const;

/** How ballast, friction of a moving house and the pull of a vehicle are computed, SI. */
export const ballastAndTowComputations: Computations = {
  "tow pull": (given) =>
    towPull.evaluate(
      given.number("weight"),
      given.number("friction"),
      Math.atan(given.number("percent") / 100),
    ),
  "dragging friction": columns({
    running: () => draggingFrictionLow.value,
    highest: () => draggingFrictionHigh.value,
    starting: () => startingFriction.value,
  }),
  "traction ratios": columns({
    resistance: (given) => motionResistanceRatio.evaluate(...atWheel(given)),
    net: (given) =>
      netTractionRatio.evaluate(
        grossTractionRatio.evaluate(...atWheel(given)),
        motionResistanceRatio.evaluate(...atWheel(given)),
      ),
  }),
  "weight over sliding pull": (given) => {
    const percent = given.has("percent") ? given.number("percent") : 0;
    const at = [given.number("degrees") * degree, given.number("friction")] as const;
    return 1 / slidingPull.evaluate(1, 1, ...at, Math.atan(percent / 100), 1);
  },
  "weight of a piece": (given) => {
    const piece = ballastPieces.find(({ id }) => id === given.text("piece"));
    return piece && weightOfPiece(piece);
  },
  "submerged factor": (given) => submergedFactor.evaluate(62.4, given.number("density")),
};
