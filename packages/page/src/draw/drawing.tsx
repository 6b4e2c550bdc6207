import type { DrawingName } from "../ask/sections.ts";
import { answer, isOld } from "../work/work.ts";
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
  return (
    <div class={isOld.value ? "drawn-box old" : "drawn-box"}>
      <Shown drawn={drawn} />
      {isOld.value ? <p class="about">As it was before what is marked was changed.</p> : null}
    </div>
  );
}
