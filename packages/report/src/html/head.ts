import { flat } from "./escape.ts";

/** The sentence nobody may miss. */
export const warning = "Consult a licensed engineer. Not a sealed design; local code first.";

/** Nothing is fetched and nothing runs, whatever stands in the page. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** A page from its doctype to the end of its head. */
export const head = (title: string, style: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${flat(title)}</title>
<style>${style}</style>
</head>`;
