/// <reference types="vite/client" />

declare const __VERSION__: string;

/** The engine's script, gzip in base64: made by vite.config.ts. */
declare module "virtual:engine" {
  const packed: string;
  export default packed;
}
