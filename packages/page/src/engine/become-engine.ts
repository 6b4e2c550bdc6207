import { notBegun } from "./begun.ts";
import type { Told } from "./messages.ts";

// What a worker runs first: the packed engine is sent to it, unpacked and run here, where the screen
// does not wait for it. What is asked meanwhile is kept and asked then.
const worker = self as unknown as {
  onmessage: (event: { readonly data: unknown }) => void;
  importScripts(url: string): void;
  postMessage(told: Told): void;
};
const waiting: { readonly data: unknown }[] = [];

/** @param packed gzip in base64 */
async function become(packed: string): Promise<void> {
  const signs = atob(packed);
  const bytes = new Uint8Array(signs.length);
  for (let at = 0; at < signs.length; at += 1) bytes[at] = signs.charCodeAt(at);
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const code = await new Response(stream).arrayBuffer();
  worker.importScripts(URL.createObjectURL(new Blob([code], { type: "text/javascript" })));
  for (const event of waiting) worker.onmessage(event);
}

worker.onmessage = ({ data }) => {
  worker.onmessage = (event) => waiting.push(event);
  become(String(data)).catch((error) =>
    worker.postMessage({ kind: "failed", turn: null, ask: null, message: notBegun(error) }),
  );
};
