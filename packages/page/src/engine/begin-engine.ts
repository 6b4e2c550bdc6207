import type { Begun } from "./begun.ts";

// A script of its own, run before the rest of the page is read: a worker stands ready when the packed engine
// has come. Both what a worker begins with and the engine lie in the page as text; nothing is fetched.
const textOf = (id: string): string => document.getElementById(id)?.textContent ?? "";
const address = URL.createObjectURL(
  new Blob([textOf("become-engine")], { type: "text/javascript" }),
);

function begin(): Begun {
  const worker = new Worker(address);
  const failed = new Promise<string>((fail) => {
    worker.onerror = ({ message }) => fail(message || "the engine stopped");
  });
  return { worker, failed };
}

let ready: Begun | null = null;
try {
  ready = begin();
} catch {
  // Told where an engine is asked for.
}

globalThis.beginEngine = () => {
  const begun = ready ?? begin();
  ready = null;
  begun.worker.postMessage(textOf("engine"));
  return begun;
};
