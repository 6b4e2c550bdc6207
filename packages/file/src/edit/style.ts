import { isCollection, isMap, isScalar } from "yaml";

/** How a value is written where it stands: inside braces or brackets; as JSON. */
export interface Style {
  readonly flow: boolean;
  readonly json: boolean;
}

/** The style of what stands within these nodes, from the whole file inward. */
export function styleWithin(nodes: readonly unknown[]): Style {
  const collections = nodes.filter(isCollection);
  const flow = collections.some((one) => one.flow);
  const map = collections.findLast((one) => isMap(one) && one.items.length > 0);
  if (!isMap(map)) return { flow, json: collections[0]?.flow === true };
  const quoted = map.items.every(({ key }) => isScalar(key) && key.type === "QUOTE_DOUBLE");
  return { flow, json: map.flow === true && quoted };
}
