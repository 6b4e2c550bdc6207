const hidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must be shown
  /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

/** Text of a file fit for the terminal: control characters and direction marks made visible. */
export const visible = (text: string): string =>
  text.replace(hidden, (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`);
