import { type Drawings, type System, show } from "@hoopstay/core";
import { across, upright } from "./dimension.ts";
import { figure, label, line, px } from "./svg.ts";

const width = 720;

/** The house from its right side: hoops, rail and noses to scale, the front on the right. */
export function sideView(drawings: Drawings, system: System): string {
  const { rise, length, springing, railDepth, railFront, railBack, noseFront, noseBack } = drawings;
  const top = springing + rise;
  const total = railFront + railBack + noseFront + noseBack;
  const scale = Math.min(440 / Math.max(total, length), 220 / top);
  const ground = 40 + top * scale;
  const middle = width / 2 - ((railFront + noseFront - railBack - noseBack) / 2) * scale;
  const x = (y: number) => middle + y * scale;
  const z = (height: number) => ground - height * scale;
  const words = (value: number) => show(value, "length", system);
  const stations = drawings.hoopStations;
  const nose = (end: number, reach: number): string =>
    `<path class="r" d="M${px(x(end))},${px(ground)}L${px(x(end + reach))},${px(z(railDepth))}H${px(x(end))}z"/>`;
  const spacing = stations.length > 1 ? (stations[1] as number) - (stations[0] as number) : 0;
  const [first = 0, last = 0] = [stations[0], stations.at(-1)];
  return figure(
    "side",
    "Side view, from the right",
    `${stations.length} hoops over ${words(length)}, crown at ${words(top)}, springing at ` +
      `${words(springing)}, bearing of the rail ${words(railFront + railBack)}.`,
    { width, height: ground + 74 },
    [
      line({ x: 30, y: ground }, { x: width - 30, y: ground }, "g"),
      ...stations.map((y) => line({ x: x(y), y: ground }, { x: x(y), y: z(top) }, "o")),
      line({ x: x(first), y: z(top) }, { x: x(last), y: z(top) }, "o"),
      line({ x: x(first), y: z(springing) }, { x: x(last), y: z(springing) }, "dash"),
      `<path class="r" d="M${px(x(-railBack))},${px(ground)}V${px(z(railDepth))}H${px(x(railFront))}V${px(ground)}z"/>`,
      noseFront > 0 ? nose(railFront, noseFront) : "",
      noseBack > 0 ? nose(-railBack, -noseBack) : "",
      across(x(-railBack), x(railFront), ground + 28, `rail bears ${words(railFront + railBack)}`),
      across(x(first), x(last), ground + 56, `${stations.length} hoops, ${words(length)}`),
      spacing === 0
        ? ""
        : across(x(first), x(first + spacing), z(top) - 10, words(Math.abs(spacing))),
      upright(126, ground, z(springing), `springing ${words(springing)}`, "left"),
      upright(width - 92, ground, z(top), `crown ${words(top)}`, "right"),
      label({ x: 34, y: ground + 16 }, "back"),
      label({ x: width - 34, y: ground + 16 }, "front", "end"),
    ],
  );
}
