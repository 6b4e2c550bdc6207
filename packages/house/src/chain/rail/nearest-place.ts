/** Which of some places along a rail lies nearest to a place, both m. */
export function nearestPlace(places: ArrayLike<number>, place: number): number {
  let nearest = 0;
  for (let at = 1; at < places.length; at += 1) {
    const [own, best] = [places[at] as number, places[nearest] as number];
    if (Math.abs(own - place) < Math.abs(best - place)) nearest = at;
  }
  return nearest;
}
