import { showGustLimit } from "@hoopstay/core";
import { system } from "../session/state.ts";
import { openWorking, type Worked } from "./working-of.ts";

/** A gust that something stands; touched, it opens its working. */
export function Gust({
  speed,
  worked,
  about,
  large = false,
}: {
  readonly speed: number;
  readonly worked: Worked;
  /** What it is the gust of, for those who hear it. */
  readonly about: string;
  readonly large?: boolean;
}) {
  const shown = showGustLimit(speed, system.value);
  return (
    <button
      type="button"
      class={large ? "number large" : "number"}
      aria-label={`${about}: ${shown}. Show the working`}
      onClick={() => openWorking(worked, about)}
    >
      {shown}
    </button>
  );
}
