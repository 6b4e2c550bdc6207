import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import process from "node:process";
import { Refusal } from "@hoopstay/core";
import type { Outcome } from "./check.ts";
import { pageText } from "./page.ts";

const loopback = "127.0.0.1";

const headers = {
  "cache-control": "no-cache",
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "no-referrer",
} as const;

/** Why a request gets no page: only those who ask this machine by its own name do, for the page alone. */
function refusal({ headers: { host = "" }, method, url = "" }: IncomingMessage) {
  if (![loopback, "localhost"].includes(host.replace(/:\d+$/, ""))) {
    return { status: 421, words: "Not served under this name.\n" };
  }
  if (method !== "GET") return { status: 405, words: "Only to be read.\n" };
  return url.split("?")[0] === "/"
    ? null
    : { status: 404, words: "Only the page at / is served.\n" };
}

function answer(request: IncomingMessage, response: ServerResponse, page: string): void {
  const refused = refusal(request);
  const type = refused ? "text/plain" : "text/html";
  response.writeHead(refused?.status ?? 200, {
    ...headers,
    "content-type": `${type}; charset=utf-8`,
  });
  response.end(refused?.words ?? page);
}

/**
 * Serves the offline page to this machine alone, until it is stopped.
 *
 * @param port 0 for any that is free
 * @throws Refusal port-unusable
 */
export async function serve(port: number, say: (text: string) => void): Promise<Outcome> {
  const page = pageText();
  const server = createServer((request, response) => answer(request, response, page));
  await new Promise<void>((settle, fail) => {
    server.once("error", fail);
    server.listen(port, loopback, settle);
  }).catch((error: NodeJS.ErrnoException) => {
    throw new Refusal([
      {
        code: "port-unusable",
        key: "--port",
        given: `${port} (${error.code})`,
        expected: "a port of this machine that is free",
        mend: "Name another one: --port 8047",
      },
    ]);
  });
  const { port: taken } = server.address() as AddressInfo;
  say(`The page is at http://${loopback}:${taken}/ for this machine alone. Ctrl-C stops it.\n`);
  await new Promise<void>((settle) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => settle());
  });
  server.close();
  server.closeAllConnections();
  return { text: "", code: 0 };
}
