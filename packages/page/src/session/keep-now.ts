import { keep } from "./keep.ts";
import { forecast, names, notice, system, texts } from "./state.ts";

/** Keeps the work as it stands; says so where this browser does not let it. */
export function keepNow(): void {
  if (!texts.value) return;
  const work = {
    texts: texts.value,
    names: names.value,
    system: system.value,
    forecast: forecast.value,
  };
  if (!keep(work)) {
    notice.value = "This browser keeps nothing between visits: save your files before you leave.";
  }
}
