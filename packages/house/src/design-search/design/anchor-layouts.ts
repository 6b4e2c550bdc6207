import { anchorsAt, equalPlaces, fittedAnchors } from "../../layout/layout.ts";
import { endsAlongRidge } from "../../layout/offered-layout.ts";
import type { AnchorKind } from "../../model/anchor-kind.ts";
import type { House } from "../../model/house-model.ts";
import type { Site } from "../../model/site-model.ts";
import { rateHouse } from "../../rating/rated-house.ts";
import type { DesignRange } from "../range/design-range.ts";
import type { AnchorLayout } from "./design.ts";

/** Outermost anchors from the ends of the rail, m: the middle one of the insets that hold tries. */
const inset = 0.3;
const upright = Math.PI / 2 - 1e-9;

function anchorsOf(kind: AnchorKind, perRail: number, house: House): House["anchors"] {
  const { id, words, angle, lead } = kind;
  const slanted = angle < upright;
  const laid = anchorsAt(
    {
      id,
      words,
      allowable: 0,
      angle,
      lead: slanted ? lead : "upright",
      stiffness: 0,
      leastSpacing: 0,
    },
    equalPlaces(house.rail, perRail, inset),
  );
  const straight = fittedAnchors(laid, house).map((anchor) => ({ ...anchor, kind: id }));
  return slanted ? endsAlongRidge(straight) : straight;
}

/** The layouts of a range, rated on this ground; the rails are as long in every design. */
export function anchorLayouts(
  { anchors: asked }: DesignRange,
  house: House,
  site: Site,
): AnchorLayout[] {
  const layout = (perRail: number | null, anchors: House["anchors"]): AnchorLayout => ({
    perRail,
    anchors,
    rated: rateHouse({ ...house, anchors }, site).house.anchors,
  });
  const kind = asked && house.anchorKinds.find(({ id }) => id === asked.kind);
  if (!asked || !kind) return [layout(null, house.anchors)];
  return asked.perRail.map((perRail) => layout(perRail, anchorsOf(kind, perRail, house)));
}
