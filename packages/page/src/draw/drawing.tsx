import type { DrawingName } from "../ask/sections.ts";
import { answer, isOld } from "../session/state.ts";
import { AnchorsDrawing } from "./anchors.tsx";
import { BaseDrawing } from "./base.tsx";
import { EndsDrawing } from "./ends.tsx";
import { FootDrawing } from "./foot.tsx";
import { HoopDrawing } from "./hoop.tsx";
import { SideDrawing } from "./side.tsx";

const drawings = {
  hoop: HoopDrawing,
  side: SideDrawing,
  foot: FootDrawing,
  base: BaseDrawing,
  ends: EndsDrawing,
  anchors: AnchorsDrawing,
};

/** The drawing that belongs to a section, of the last state of the house that could be read. */
export function Drawing({ name }: { readonly name: DrawingName }) {
  const drawn = answer.value?.review.drawings;
  if (!drawn) return <p class="drawn-figure about">Drawn as soon as nothing is missing.</p>;
  const Shown = drawings[name];
  const kind = `drawn-box${isTall(name) ? " tall" : ""}${isOld.value ? " old" : ""}`;
  return (
    <div class={kind}>
      <Shown drawn={drawn} />
      {isOld.value ? <p class="about">As it was before what is marked was changed.</p> : null}
    </div>
  );
}

/** A plan takes the screen's whole height; the others stay in sight while one types. */
const isTall = (name: DrawingName): boolean => name === "base" || name === "anchors";
