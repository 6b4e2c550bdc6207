/**
 * What to say about frost: nothing where the plate lies at the frost line or below, or where the
 * frost line is unknown and the caller has said so. 24 CFR 3285.404 [read] wants the auger below it
 * unless the ground is protected from frost.
 *
 * @param plateDepth depth of the shallowest plate counted, m
 * @param frostDepth depth of the frost line, m
 */
export function frostFinding(plateDepth: number, frostDepth: number): string | null {
  if (plateDepth >= frostDepth) return null;
  return (
    "The plate lies above the frost line. Frost can lift it and loosen the ground over it: set it " +
    "below the frost line or protect the ground from frost (24 CFR 3285.404)."
  );
}
