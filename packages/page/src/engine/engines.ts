import { notBegun } from "./begun.ts";
import type { Asked, Told } from "./messages.ts";

/** An engine that answers in the order asked. */
export interface Engine {
  ask(asked: Asked): void;
}

function started(hear: (told: Told) => void, fail: (message: string) => void): Engine {
  const { worker, failed } = beginEngine();
  worker.onmessage = ({ data }: MessageEvent<Told>) => hear(data);
  failed.then(fail);
  return { ask: (asked) => worker.postMessage(asked) };
}

/** Starts an engine beside the screen. What is asked before it stands waits. */
export function startEngine(hear: (told: Told) => void, fail: (message: string) => void): Engine {
  try {
    return started(hear, fail);
  } catch (error) {
    fail(notBegun(error as Error));
    return { ask: () => undefined };
  }
}
