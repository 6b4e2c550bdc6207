/**
 * Keys that go when another one beside them is changed: they say the same thing in another way, or
 * are the certificate of a tube that is no longer there.
 */
const dimensions = ["outside", "depth", "width", "wall", "gauge", "gauge_table"];
const certificate = ["yield", "tensile"];

const ofTube: Readonly<Record<string, readonly string[]>> = {
  size: [...dimensions, "standard", "grade", ...certificate],
  outside: ["size", "depth", "width", ...certificate],
  depth: ["size", "outside", ...certificate],
  width: ["size", "outside", ...certificate],
  wall: ["size", "gauge", "gauge_table", ...certificate],
  gauge: ["size", "wall", ...certificate],
};

const ofHoops: Readonly<Record<string, readonly string[]>> = {
  spacing: ["count"],
  count: ["spacing"],
};

/** The paths that a changed path stands for, so that they have to go. */
export function goneWith(path: readonly string[]): string[][] {
  const [key = "", block] = [path.at(-1), path.at(-2)];
  const own = block === "tube" || block === "pipe" ? ofTube : block === "hoops" ? ofHoops : {};
  const others = Object.hasOwn(own, key) ? (own[key] ?? []) : [];
  return others.map((other) => [...path.slice(0, -1), other]);
}
