import { showGustLimit } from "@hoopstay/core";
import type { WorkingOf } from "../engine/messages.ts";
import { system } from "../work/work.ts";
import { openWorking } from "./working-of.ts";

/** A gust that something stands; touched, it opens its working. */
export function Gust({
  speed,
  of,
  about,
  large = false,
}: {
  readonly speed: number;
  readonly of: WorkingOf;
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
      onClick={() => openWorking(of, about)}
    >
      {shown}
    </button>
  );
}
