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
import { perSecond } from "./per-second.ts";
import { tell } from "./told.ts";

// The hoop as a plane frame, made new each time, beside the bare arithmetic that no such method escapes.

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

const placesRead = 107;
const windsAsked = 68;

/** Eight stretches, weight and push on a hoop bolted at both feet with a tie: as a house asks it. */
function framed(radius: number): HoopFrame {
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
  return new HoopFrame(hoop, [...stretches, { kind: "weight" }, { kind: "push" }]);
}

const windOf = (wind: number): number[] => [wind, -700, -700, -350, 300, 200, 100, 50, 40, 10];

function houseWork(radius: number): number {
  const frame = framed(radius);
  const { length } = hoopOf(radius).line;
  const places = Array.from({ length: placesRead }, (_, i) => (i / (placesRead - 1)) * length);
  const stations = new HoopStations(frame, places);
  const rows = responsesOnFeet(frame, fixedFeet);
  const response = new Float64Array(frame.size);
  const forces = new Float64Array(3 * stations.count);
  let sum = 0;
  for (let wind = 0; wind < windsAsked; wind += 1) {
    superpose(rows, frame.size, windOf(wind), response);
    stations.forces(response, forces);
    sum += forces[wind] as number;
  }
  return sum;
}

/**
 * What no such method escapes, on flat arrays and without a frame: under each wind ten responses are
 * summed, and three forces at every place are sums of three of their numbers. A floor, not a method.
 */
function flattened(): () => number {
  const { size } = framed(2.4);
  const rows = Float64Array.from({ length: 10 * size }, (_, at) => at / size);
  const response = new Float64Array(size);
  return () => {
    let sum = 0;
    for (let wind = 0; wind < windsAsked; wind += 1) {
      const factors = windOf(wind);
      response.fill(0);
      for (let load = 0; load < factors.length; load += 1) {
        const factor = factors[load] as number;
        for (let k = 0; k < size; k += 1) {
          response[k] = (response[k] as number) + factor * (rows[load * size + k] as number);
        }
      }
      for (let force = 0; force < 3 * placesRead; force += 1) {
        const at = force % (size - 2);
        const [one, two] = [response[at] as number, response[at + 1] as number];
        sum += 0.3 * one + 0.6 * two - (response[at + 2] as number);
      }
    }
    return sum;
  };
}

let radius = 2.4;
/** Another radius every time, so that nothing can be kept from one hoop to the next. */
const nextRadius = (): number => {
  radius = radius > 5 ? 2.4 : radius + 0.001;
  return radius;
};

const hoops = perSecond(() => work(nextRadius()), 150, 20);
const inHouse = perSecond(() => houseWork(nextRadius()), 150, 20);
const floor = perSecond(flattened(), 30, 100);
console.log(
  `hoop, two feet, two readings: ${(1e6 / hoops).toFixed(0)} microseconds
  hoop of a house, bolted and tied, read at 107 places under 68 winds: ${(1e6 / inHouse).toFixed(0)} microseconds
  flattened arithmetic of it: ${(1e6 / floor).toFixed(0)} microseconds`,
);
tell({
  name: "hoop-solve",
  words: "hoops of a house a second over passes of flattened arithmetic",
  ratio: inHouse / floor,
  better: "more",
  room: 1.6,
});
