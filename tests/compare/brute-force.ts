/**
 * Fewest sticks by trying everything: each piece in turn goes on every stick that has room, and on a
 * new one. For a handful of pieces.
 */
export function fewestByTrying(lengths: readonly number[], stock: number, sawCut: number): number {
  let best = lengths.length;
  const rooms: number[] = [];
  const place = (at: number): void => {
    if (rooms.length >= best) return;
    const length = lengths[at];
    if (length === undefined) {
      best = rooms.length;
      return;
    }
    const needed = length + sawCut;
    for (const [stick, room] of rooms.entries()) {
      if (needed > room) continue;
      rooms[stick] = room - needed;
      place(at + 1);
      rooms[stick] = room;
    }
    rooms.push(stock + sawCut - needed);
    place(at + 1);
    rooms.pop();
  };
  place(0);
  return best;
}
