export const hostile = [
  ["closing tags", "</style></title></bdi></svg></section><script>alert(1)</script>"],
  ["quotes", "\" onload=\"alert(1)' x='"],
  ["comment and entity ends", "--> ]]> &lt;b&gt; & &#x3c;i>"],
  ["style ends", '";} body{display:none} /* \\'],
  ["right-to-left marks", "\u202eyawa ti evig\u2067 \u05d0\u05d1"],
  ["controls and half pairs", "a\u0000b\u0007c\ud800"],
  ["no end", "x".repeat(5000)],
] as const;

const keysOfProgram = [
  "kind",
  "check",
  "hold",
  "measure",
  "file",
  "per",
  "combination",
  "source",
  "grade",
];

/** Every string of a record replaced, but for those that are keys of the program. */
export function everywhere<Value>(
  value: Value,
  words: string,
  fixed: readonly string[] = keysOfProgram,
): Value {
  const replaced = (one: unknown, key: string): unknown => {
    if (typeof one === "string") return fixed.includes(key) ? one : words;
    if (Array.isArray(one)) return one.map((item) => replaced(item, key));
    if (typeof one !== "object" || one === null || key === "chapters") return one;
    return Object.fromEntries(
      Object.entries(one).map(([name, item]) => [name, replaced(item, name)]),
    );
  };
  return replaced(value, "") as Value;
}
