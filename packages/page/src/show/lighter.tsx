import { useState } from "preact/hooks";
import { glance } from "../ask/glance.ts";
import { valueAt } from "../ask/lookup.ts";
import { questionFor } from "../ask/wording.ts";
import type { Paper } from "../engine/messages.ts";
import { texts } from "../session/state.ts";
import { Made } from "./paper-fold.tsx";

const parts = [
  ["hoops", "the hoops"],
  ["rails", "the rails"],
  ["stubs", "the stubs"],
  ["cross_members", "the cross members"],
  ["ridge", "the ridge"],
  ["purlins", "the purlins"],
  ["collar_ties", "the collar ties"],
] as const;

/** What makes a tube lighter, by how its wall is told. */
const sizeKeys = ["size", "gauge", "wall", "outside"] as const;
const steelKeys = ["grade", "yield", "tensile"] as const;

type Tube = Readonly<Record<string, unknown>>;

/** Today's house beside the same with another tube in one part. */
export function Lighter() {
  const [part, setPart] = useState<string>("hoops");
  const [told, setTold] = useState<Readonly<Record<string, string>>>({});
  const [sameSteel, setSameSteel] = useState(false);
  const [asked, setAsked] = useState<Paper | null>(null);
  const tube = (valueAt("house", [part, "tube"]) ?? {}) as Tube;
  const keys = sizeKeys.filter((key) => tube[key] !== undefined);
  const there = parts.filter(([key]) => valueAt("house", [key, "tube"]) !== undefined);
  const variants = valueAt("house", ["variants"]);
  const change = Object.fromEntries(
    keys.flatMap((key) => {
      const now = told[key]?.trim();
      if (!now || now === String(tube[key])) return [];
      return [[`${part}.tube.${key}`, key === "gauge" && /^\d+$/.test(now) ? Number(now) : now]];
    }),
  );
  const steel = sameSteel
    ? Object.fromEntries(
        steelKeys.flatMap((key) =>
          tube[key] === undefined ? [] : [[`${part}.tube.${key}`, tube[key]]],
        ),
      )
    : {};
  return (
    <section aria-labelledby="lighter-title">
      <h2 id="lighter-title">Would a lighter tube do?</h2>
      <div class="field">
        <label for="lighter-part">Another tube for</label>
        <select
          id="lighter-part"
          value={part}
          onChange={({ currentTarget }) => {
            setPart(currentTarget.value);
            setTold({});
          }}
        >
          {there.map(([key, words]) => (
            <option key={key} value={key}>
              {words} (now {glance(valueAt("house", [key, "tube"]))})
            </option>
          ))}
        </select>
      </div>
      {keys.map((key) => (
        <div class="field" key={`${part} ${key}`}>
          <label for={`lighter-${key}`}>{questionFor(`${part}.tube.${key}`)}</label>
          <input
            id={`lighter-${key}`}
            type="text"
            autocomplete="off"
            maxLength={60}
            value={told[key] ?? String(tube[key])}
            onInput={({ currentTarget }) => setTold({ ...told, [key]: currentTarget.value })}
          />
        </div>
      ))}
      <p>
        <label class="tick">
          <input
            type="checkbox"
            checked={sameSteel}
            onChange={({ currentTarget }) => setSameSteel(currentTarget.checked)}
          />
          Its steel is as strong: the same grade and mill certificate
        </label>
      </p>
      <p class="row">
        <button
          type="button"
          disabled={Object.keys(change).length === 0}
          onClick={() => setAsked({ name: "compare", change: { ...change, ...steel } })}
        >
          Set it beside today's house
        </button>
        {Array.isArray(variants) && variants.length > 0 ? (
          <button type="button" onClick={() => setAsked({ name: "compare", change: null })}>
            The {variants.length} variants of the house file
          </button>
        ) : null}
      </p>
      {asked && texts.value ? <Made paper={asked} /> : null}
    </section>
  );
}
