import packed from "virtual:engine";
import type { Asked, Told } from "./messages.ts";

/** An engine that answers in the order asked. */
export interface Engine {
  ask(asked: Asked): void;
}

let script: Promise<string> | undefined;

/** Where the engine's script lies, unpacked out of this very file. */
async function unpacked(): Promise<string> {
  const bytes = Uint8Array.from(atob(packed), (sign) => sign.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const code = await new Response(stream).blob();
  return URL.createObjectURL(new Blob([code], { type: "text/javascript" }));
}

/** Starts an engine beside the screen: nothing is fetched. What is asked before it stands waits. */
export function startEngine(hear: (told: Told) => void, fail: (message: string) => void): Engine {
  script ??= unpacked();
  const worker = script.then((url) => {
    const started = new Worker(url);
    started.onmessage = ({ data }: MessageEvent<Told>) => hear(data);
    started.onerror = ({ message }) => fail(message || "the engine stopped");
    return started;
  });
  worker.catch((error: Error) => fail(`this browser cannot start the engine (${error.message})`));
  return { ask: (asked) => void worker.then((started) => started.postMessage(asked)) };
}
