import { FOOT } from "@hoopstay/core";
import type { Tube } from "@hoopstay/section";
import { tubeModel } from "../model/tube-model.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { PathComplaint } from "./complaints.ts";
import { type ReadSizes, shownLength, tubeText } from "./read-sizes.ts";

const hair = 1e-9;

/** Feet that cannot be as they are entered: bolts beyond the stub, a hoop wider than its rail. */
export function footComplaints(input: HouseInput, sizes: ReadSizes | undefined): PathComplaint[] {
  return [
    ...boltPlaceComplaints(input),
    ...(sizes ? [...boltSizeComplaints(input, sizes), ...widthComplaints(input, sizes)] : []),
  ];
}

/** Bolts stand on the stub, their edge within the hoop below and the stub above. */
function boltPlaceComplaints({ stubs }: HouseInput): PathComplaint[] {
  const { bolts, length, shoulder } = stubs;
  if (!bolts) return [];
  const even = length.value / (bolts.count + 1);
  const first = bolts.first?.value ?? even;
  const edge = bolts.edge?.value ?? 0;
  const low = (shoulder?.value ?? 0) + edge;
  const high = length.value - edge;
  const last = first + (bolts.count - 1) * (bolts.spacing?.value ?? even);
  const typed = (["first", "spacing", "edge"] as const).flatMap((key) => {
    const quantity = bolts[key];
    return quantity ? [{ key, text: `${key} ${quantity.text}` }] : [];
  });
  const given = [`count ${bolts.count}`, ...typed.map(({ text }) => text)].join(", ");
  const complaints: PathComplaint[] = [];
  const complain = (wanted: readonly string[], expected: string): void => {
    const found = wanted.find((key) => typed.some((one) => one.key === key));
    complaints.push({
      path: ["stubs", "bolts", ...(found ? [found] : [])],
      code: "sizes-disagree",
      given,
      expected,
      mend: "Measure from the rail's top face up: the lowest bolt, bolt to bolt, and the stub.",
    });
  };
  if (first < low - hair) {
    const expected = `a lowest bolt at ${shownLength(low)} or above: shoulder and edge lie below it`;
    complain(["first", "edge"], expected);
  }
  if (last > high + hair) {
    const keys = first > high + hair ? ["first", "edge"] : ["spacing", "first", "edge"];
    complain(
      keys,
      `a highest bolt at ${shownLength(high)} or below, on a stub of ${length.text}: this one is at ${shownLength(last)}`,
    );
  }
  return complaints;
}

const boreOf = (tube: Tube): number | null => {
  if (tube.kind === "round") return tube.outside - 2 * tube.wall;
  return tube.kind === "rectangular" ? Math.min(tube.depth, tube.width) - 2 * tube.wall : null;
};

/** A hole is 1/16 in over the bolt, and its making spoils 1/16 in more, m. */
const holeOverBolt = (2 / 16) * (FOOT / 12);

function boltSizeComplaints({ stubs }: HouseInput, { hoopTube }: ReadSizes): PathComplaint[] {
  const stub = tubeModel(stubs.tube, [], []);
  const bores = [hoopTube, ...(stub ? [stub] : [])].flatMap((tube) => boreOf(tube) ?? []);
  const bore = Math.min(...bores);
  const diameter = stubs.bolts?.diameter;
  if (!diameter || diameter.value + holeOverBolt < bore) return [];
  return [
    {
      path: ["stubs", "bolts", "diameter"],
      code: "sizes-disagree",
      given: diameter.text,
      expected: `a bolt whose hole is narrower than the bore of hoop and stub, ${shownLength(bore)}`,
      mend: "Check the bolt's diameter and its unit.",
    },
  ];
}

function widthComplaints(
  { hoops, rails }: HouseInput,
  { hoopTube, railWidth }: ReadSizes,
): PathComplaint[] {
  if (hoopTube.kind !== "round" || hoopTube.outside <= railWidth + hair) return [];
  return [
    {
      path: ["hoops", "tube"],
      code: "sizes-disagree",
      given: `${tubeText(hoops.tube)}, on a rail of ${tubeText(rails.tube)}`,
      expected: `a hoop no wider than its rail, ${shownLength(railWidth)}`,
      mend: "A hoop that overhangs its rail is not computed. Check both tubes, and depth and width.",
    },
  ];
}
