import type { Question } from "@hoopstay/core";
import type { Value } from "@hoopstay/file/value";
import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { change } from "../session/conversation.ts";
import type { Place } from "./control.ts";
import { Field } from "./field.tsx";
import { Folded } from "./folded.tsx";
import { entryName, glance } from "./glance.ts";
import { complaintsUnder, keyOf, valueAt } from "./lookup.ts";
import { questionFor } from "./wording.ts";

type List = Extract<Question, { kind: "list" }>;
type Group = Extract<Question, { kind: "group" }>;

/** Shows the questions of a group: entries are groups, and groups have lists. */
interface WithParts {
  readonly Parts: (shown: Place & { readonly question: Group }) => JSX.Element;
}

/** Entries of one kind: each opened to be changed, one more like it, or taken out. */
export function ListField({
  question,
  file,
  path,
  Parts,
}: Place & WithParts & { readonly question: List }) {
  const key = keyOf(path);
  const value = valueAt(file, path);
  const entries: readonly Value[] = Array.isArray(value) ? value : [];
  // A new entry stands at its place before anything of it is told, and stays open when it is.
  const [begun, setBegun] = useState<number | null>(null);
  const shown = begun === entries.length ? [...entries, undefined] : entries;
  return (
    <Folded
      title={questionFor(key)}
      says={entries.length === 0 ? "none" : glance(entries)}
      wrong={complaintsUnder(file, key).length}
      kind="group"
      name={`${file} ${key}`}
    >
      {() => (
        <>
          {question.about ? <p class="about">{question.about}</p> : null}
          {shown.map((entry, place) => (
            <Entry
              key={place}
              question={question.item}
              Parts={Parts}
              file={file}
              path={[...path, place]}
              name={entryName(entry, place)}
              fresh={place >= entries.length}
              more={() => change({ file, path: [...path, entries.length], value: likeness(entry) })}
              out={() =>
                entry === undefined
                  ? setBegun(null)
                  : change({ file, path: [...path, place], value: undefined })
              }
            />
          ))}
          <button
            type="button"
            class="add"
            onClick={() => setBegun(entries.length)}
            disabled={begun === entries.length}
          >
            + One more
          </button>
        </>
      )}
    </Folded>
  );
}

/** One more like it, but with neither its name nor its place: two cannot share these. */
function likeness(entry: Value | undefined): Value {
  if (typeof entry !== "object" || Array.isArray(entry)) return entry ?? "";
  const own = ["name", "id", "along", "date"];
  return Object.fromEntries(Object.entries(entry).filter(([key]) => !own.includes(key)));
}

function Entry({
  question,
  file,
  path,
  Parts,
  name,
  fresh,
  more,
  out,
}: Place &
  WithParts & {
    readonly question: Question;
    readonly name: string;
    readonly fresh: boolean;
    readonly more: () => void;
    readonly out: () => void;
  }) {
  const wrong = complaintsUnder(file, keyOf(path)).length;
  return (
    <Folded
      title={fresh ? "A new one" : name}
      wrong={wrong}
      start={fresh}
      kind="entry"
      name={`${file} ${keyOf(path)}`}
    >
      {() => (
        <>
          {question.kind === "group" ? (
            <Parts question={question} file={file} path={path} />
          ) : (
            <Field question={question} file={file} path={path} />
          )}
          <p class="row">
            {fresh ? null : (
              <button type="button" onClick={more}>
                + One like this
              </button>
            )}
            <button type="button" class="out" onClick={out}>
              Take it out
            </button>
          </p>
        </>
      )}
    </Folded>
  );
}
