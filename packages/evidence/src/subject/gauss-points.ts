/** Gauss and Legendre's points on -1 to 1 and their weights, found by Newton's method. */
export function gaussPoints(count: number): { point: number; weight: number }[] {
  return Array.from({ length: count }, (_, i) => {
    let point = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let tries = 0; tries < 40; tries += 1) {
      let [before, here] = [1, point];
      for (let n = 2; n <= count; n += 1) {
        [before, here] = [here, ((2 * n - 1) * point * here - (n - 1) * before) / n];
      }
      slope = (count * (point * here - before)) / (point * point - 1);
      point -= here / slope;
    }
    return { point, weight: 2 / ((1 - point * point) * slope * slope) };
  });
}
