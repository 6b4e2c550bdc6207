import { tubeModel } from "../../model/tube-model.ts";
import type { Path, PathComplaint } from "../../read/complaints.ts";
import { nearest } from "../../read/nearest.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import { tubeSchema } from "../../schema/tube.ts";
import { valueAt } from "../changed-document.ts";
import { schemaPath } from "../schema-path.ts";

const tubeKeys = [
  "hoops.tube",
  "stubs.tube",
  "rails.tube",
  "cross_members.tube",
  "ridge.tube",
  "purlins.tube",
  "collar_ties.tube",
];

/** What contradicts itself in the prices of a house file that has passed its schema. */
export function priceComplaints(input: HouseInput): PathComplaint[] {
  const { stock = [], anchors = [] } = input.prices ?? {};
  const complaints: PathComplaint[] = [];
  stock.forEach(({ tube, for: key }, index) => {
    const path = ["prices", "stock", index];
    if ((tube === undefined) === (key === undefined)) {
      complaints.push({
        path: [...path, "tube"],
        code: tube ? "sizes-disagree" : "key-missing",
        expected: "either tube, or for with a key where the tube stands in this file",
        mend: "Take one of the two, for example for: hoops.tube",
      });
    } else if (tube) tubeModel(tube, [...path, "tube"], complaints);
    else complaints.push(...keyComplaints(input, key ?? "", [...path, "for"]));
  });
  const kinds = (input.anchor_kinds ?? []).map(({ id }) => id);
  anchors.forEach(({ kind }, index) => {
    if (anchors.findIndex((one) => one.kind === kind) < index) {
      complaints.push({
        path: ["prices", "anchors", index],
        code: "key-duplicate",
        given: kind ?? "no kind",
        expected: "one price for each kind, and one for anchors without a kind",
        mend: "Take one of the two out.",
      });
    }
    if (kind === undefined || kinds.includes(kind)) return;
    const near = nearest(kind, kinds);
    complaints.push({
      path: ["prices", "anchors", index, "kind"],
      code: "wrong-kind",
      given: kind,
      expected: kinds.length > 0 ? `one of: ${kinds.join(", ")}` : "an id of anchor_kinds",
      mend: near ? `Did you mean "${near}"?` : "List the kind under anchor_kinds.",
    });
  });
  return complaints;
}

/** A key in `for` that leads to no tube of this house. */
function keyComplaints(input: HouseInput, key: string, path: Path): PathComplaint[] {
  const found = schemaPath(key);
  const isTube = found.ok && found.schema === tubeSchema;
  if (isTube && valueAt(input, found.path) !== undefined) return [];
  const near = nearest(key, tubeKeys);
  return [
    {
      path,
      code: isTube ? "key-missing" : "wrong-kind",
      given: key,
      expected: isTube ? "a tube that this house has" : `the key of a tube: ${tubeKeys.join(", ")}`,
      mend: near && near !== key ? `Did you mean "${near}"?` : "Give the tube itself: tube.",
    },
  ];
}
