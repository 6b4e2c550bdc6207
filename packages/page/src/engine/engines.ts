import type { Asked, Told } from "./messages.ts";
import EngineWorker from "./worker.ts?worker&inline";

/** An engine that answers in the order asked. */
export interface Engine {
  ask(asked: Asked): void;
}

/** Starts an engine beside the screen, in the same file: nothing is fetched. */
export function startEngine(hear: (told: Told) => void, fail: (message: string) => void): Engine {
  const worker = new EngineWorker();
  worker.onmessage = ({ data }: MessageEvent<Told>) => hear(data);
  worker.onerror = (event) => fail(event.message || "the engine does not start in this browser");
  return { ask: (asked) => worker.postMessage(asked) };
}
