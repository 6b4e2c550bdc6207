import {
  fixedFeet,
  type Hoop,
  type HoopBar,
  HoopFrame,
  type HoopLoad,
  HoopStations,
  hoopExtremes,
  hoopLine,
  pinnedFeet,
  responsesOnFeet,
  superpose,
} from "@hoopstay/frame";
import { expect, test } from "vitest";

const tube = { A: 5.23e-4, I: 2.16e-7, E: 2e11 };

/** A hoop on legs; a new one each time, so that nothing can be kept from one to the next. */
function hoopOf(radius: number): Hoop {
  const leg = 1.2;
  const line = hoopLine([
    { kind: "straight", from: { x: -radius, z: 0 }, to: { x: -radius, z: leg } },
    { kind: "arc", centre: { x: 0, z: leg }, radius, fromAngle: Math.PI, toAngle: 0 },
    { kind: "straight", from: { x: radius, z: leg }, to: { x: radius, z: 0 } },
  ]);
  return { line, section: tube, hinges: [], joints: [], bars: [] };
}

/** Both readings of the quarters, the legs and the weight: what one hoop is asked in the wind. */
function loadsOn({ line }: Hoop): HoopLoad[] {
  const [from, to] = [line.start[1] as number, line.start[2] as number];
  const readings = [
    [0, 1 / 4, 1 / 2, 3 / 4, 1],
    [0, 1 / 3, 1 / 2, 2 / 3, 1],
  ].flatMap((parts) =>
    parts.slice(1).map((part, i): HoopLoad => {
      const start = from + (to - from) * (parts[i] as number);
      return { kind: "normal", from: start, to: from + (to - from) * part };
    }),
  );
  return [
    ...readings,
    { kind: "normal", from: 0, to: from },
    { kind: "normal", from: to, to: line.length },
    { kind: "weight" },
  ];
}

const winds = [
  [265, -704, -704, -347, 0, 0, 0, 0, 316, -347, 40],
  [0, 0, 0, 0, 265, -704, -704, -347, 316, -347, 40],
];

function work(radius: number): number {
  const hoop = hoopOf(radius);
  const frame = new HoopFrame(hoop, loadsOn(hoop));
  const response = new Float64Array(frame.size);
  const found = new Float64Array(12);
  let greatest = 0;
  for (const feet of [pinnedFeet, fixedFeet]) {
    const rows = responsesOnFeet(frame, feet);
    for (const wind of winds) {
      superpose(rows, frame.size, wind, response);
      hoopExtremes(frame, response, found);
      for (const value of found) greatest = Math.max(greatest, value);
    }
  }
  return greatest;
}

/** Eight stretches, weight and push on a hoop bolted at both feet with a tie: as a house asks it. */
function houseWork(radius: number): number {
  const plain = hoopOf(radius);
  const { length } = plain.line;
  const tie: HoopBar = {
    from: { s: 0.24 * length },
    to: { s: 0.76 * length },
    fromEnd: "pinned",
    toEnd: "pinned",
    section: tube,
    weight: 0,
  };
  const hoop = { ...plain, hinges: [0.02 * length, 0.98 * length], bars: [tie] };
  const stretches = Array.from({ length: 8 }, (_, i): HoopLoad => {
    return { kind: "normal", from: (i * length) / 8, to: ((i + 1) * length) / 8 };
  });
  const frame = new HoopFrame(hoop, [...stretches, { kind: "weight" }, { kind: "push" }]);
  const places = Array.from({ length: 107 }, (_, i) => (i / 106) * length);
  const stations = new HoopStations(frame, places);
  const rows = responsesOnFeet(frame, fixedFeet);
  const response = new Float64Array(frame.size);
  const forces = new Float64Array(3 * stations.count);
  let sum = 0;
  for (let wind = 0; wind < 68; wind += 1) {
    superpose(rows, frame.size, [wind, -700, -700, -350, 300, 200, 100, 50, 40, 10], response);
    stations.forces(response, forces);
    sum += forces[wind] as number;
  }
  return sum;
}

/** Least time of one piece of work, ms. */
function leastTime(piece: (radius: number) => number): number {
  let [best, sum] = [Number.POSITIVE_INFINITY, 0];
  for (let round = 0; round < 300; round += 1) {
    const start = performance.now();
    for (let i = 0; i < 10; i += 1) sum += piece(2.4 + 0.001 * (10 * round + i));
    best = Math.min(best, (performance.now() - start) / 10);
  }
  expect(Number.isFinite(sum)).toBe(true);
  return best;
}

test("a hoop with four zones in both readings, on pinned and on fixed feet, takes under 1 ms", () => {
  const best = leastTime(work);
  console.log(`hoop, two feet, two readings: ${(1000 * best).toFixed(0)} microseconds`);
  expect(best).toBeLessThan(1);
});

test("a bolted and tied hoop read at 107 places under 68 winds takes under 2 ms", () => {
  const best = leastTime(houseWork);
  console.log(`hoop of a house, 107 places, 68 winds: ${(1000 * best).toFixed(0)} microseconds`);
  expect(best).toBeLessThan(2);
});
