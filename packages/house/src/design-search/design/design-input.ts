import type { HouseInput } from "../../schema/house-schema.ts";
import type { Design } from "./design.ts";

const counted = ["collar_ties", "truss_bars", "knee_braces"] as const;

/**
 * The house file of a design. Ties and braces of which today's house has as many to each hoop keep
 * that number to each hoop.
 *
 * @param hoopsToday number of hoops of today's house
 */
export function designInput(
  input: HouseInput,
  hoopsToday: number,
  { hoop, count, rail }: Omit<Design, "layout">,
): HouseInput {
  const { spacing: _, ...hoops } = input.hoops;
  const changed: HouseInput = {
    ...input,
    hoops: { ...hoops, count, tube: hoop.input },
    rails: { ...input.rails, tube: rail.input },
  };
  for (const key of counted) {
    const bars = input[key];
    if (!bars || bars.count % hoopsToday !== 0) continue;
    Object.assign(changed, { [key]: { ...bars, count: (bars.count / hoopsToday) * count } });
  }
  return changed;
}
