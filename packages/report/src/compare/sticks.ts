import type { CutList, CutStick, System } from "@hoopstay/core";
import { figure, label, line, px } from "../drawing/svg.ts";
import { cutLength } from "../value/cut-length.ts";

const width = 340;
const left = 38;
const right = width - 6;
const pitch = 32;
const depth = 20;

/** Sticks cut alike are one row. */
export interface StickGroup {
  readonly count: number;
  readonly stick: CutStick;
}

export function groupSticks(sticks: readonly CutStick[]): StickGroup[] {
  const groups = new Map<string, { count: number; stick: CutStick }>();
  for (const stick of sticks) {
    const key = JSON.stringify(stick.pieces);
    const known = groups.get(key);
    if (known) known.count += 1;
    else groups.set(key, { count: 1, stick });
  }
  return [...groups.values()];
}

/** Every stick to scale: its pieces, and what is left over, hatched. */
export function sticksDrawing(cut: CutList, name: string, system: System): string {
  const groups = groupSticks(cut.sticks);
  const scale = (right - left) / cut.stock;
  return figure(
    `cut-${name}`,
    `Sticks ${name}, ${cutLength(cut.stock, system)} each, to scale`,
    "Each bar is a stick as bought. Its parts are the pieces cut from it; what is left over is hatched. The table has the same.",
    { width, height: 8 + pitch * groups.length },
    groups.map(({ count, stick }, place) =>
      stickMarkup(count, stick, 6 + pitch * place, scale, system),
    ),
    "slim",
  );
}

function stickMarkup(
  count: number,
  { pieces, waste }: CutStick,
  y: number,
  scale: number,
  system: System,
): string {
  let x = left;
  const parts = pieces.map(({ length }) => {
    const size = length * scale;
    const words = cutLength(length, system);
    const fits = 6.6 * words.length < size - 4;
    const part = `<rect class="r" x="${px(x)}" y="${y}" width="${px(size)}" height="${depth}"/>${
      fits ? label({ x: x + size / 2, y: y + 15 }, words, "middle") : ""
    }`;
    x += size;
    return part;
  });
  return `${label({ x: left - 6, y: y + 15 }, `${count} \u00d7`, "end", "w")}${parts.join("")}${leftOver(x, y, waste * scale)}`;
}

function leftOver(x: number, y: number, size: number): string {
  const strokes = Array.from({ length: Math.floor(size / 6) }, (_, place) => {
    const foot = x + 6 * place;
    return line({ x: foot, y: y + depth }, { x: Math.min(x + size, foot + 6), y }, "g");
  });
  return `<rect x="${px(x)}" y="${y}" width="${px(size)}" height="${depth}"/>${strokes.join("")}`;
}
