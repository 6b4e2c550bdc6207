import { spawn } from "node:child_process";
import { request } from "node:http";
import process from "node:process";
import { beforeAll, expect, test } from "vitest";
import { buildOnce, built } from "./program.ts";

beforeAll(buildOnce);

interface Got {
  readonly status: number | undefined;
  readonly length: number;
}

const get = (port: number, path: string, host: string, method = "GET"): Promise<Got> =>
  new Promise((done, fail) => {
    const options = { host: "127.0.0.1", port, path, method, headers: { host } };
    request(options, (response) => {
      let length = 0;
      response.on("data", (part: Buffer) => {
        length += part.length;
      });
      response.on("end", () => done({ status: response.statusCode, length }));
    })
      .on("error", fail)
      .end();
  });

test("the page is served to this machine alone, under its own name, and nothing else is", async () => {
  const child = spawn(process.execPath, [built, "serve", "--port", "0"]);
  try {
    const said = await new Promise<string>((done) =>
      child.stdout.once("data", (text) => done(String(text))),
    );
    const port = Number(/127\.0\.0\.1:(\d+)/.exec(said)?.[1]);
    const page = await get(port, "/", `127.0.0.1:${port}`);
    expect(page.status).toBe(200);
    expect(page.length).toBeGreaterThan(100_000);
    expect((await get(port, "/", `localhost:${port}`)).status).toBe(200);
    expect((await get(port, "/", "elsewhere.example")).status).toBe(421);
    expect((await get(port, "/package.json", "localhost")).status).toBe(404);
    expect((await get(port, "/", "localhost", "POST")).status).toBe(405);
  } finally {
    child.kill("SIGTERM");
  }
  expect(await new Promise((done) => child.once("exit", done))).toBe(0);
});
