/**
 * Places for labels along a line: each as near to where it is wanted as the others leave room.
 *
 * @param wanted where each is wanted, in rising order, and the room it takes up to the next
 * @returns places between `low` and `high`, or beyond `low` where there is no room for all
 */
export function spread(
  wanted: readonly { readonly at: number; readonly room: number }[],
  low: number,
  high: number,
): number[] {
  const places: number[] = [];
  let least = low;
  for (const { at, room } of wanted) {
    places.push(Math.max(at, least));
    least = (places.at(-1) as number) + room;
  }
  let most = high;
  for (let index = places.length - 1; index >= 0; index -= 1) {
    places[index] = Math.min(places[index] as number, most);
    most = (places[index] as number) - (wanted[index - 1]?.room ?? 0);
  }
  return places;
}
