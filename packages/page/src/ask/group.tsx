import type { Question } from "@hoopstay/core";
import { change } from "../session/conversation.ts";
import type { Place } from "./control.ts";
import { Field } from "./field.tsx";
import { Folded } from "./folded.tsx";
import { glance } from "./glance.ts";
import { ListField } from "./list.tsx";
import { complaintsUnder, keyOf, valueAt } from "./lookup.ts";
import { isRare, questionFor } from "./wording.ts";

type Group = Extract<Question, { kind: "group" }>;

/** One question of any kind below a path. */
export function Asked({ question, file, path }: Place & { readonly question: Question }) {
  if (question.kind === "group") return <Fold question={question} file={file} path={path} />;
  if (question.kind === "list")
    return <ListField question={question} file={file} path={path} Parts={Parts} />;
  return <Field question={question} file={file} path={path} />;
}

/** The questions of a group; what few ask for is folded away unless it is told or wrong. */
export function Parts({ question, file, path }: Place & { readonly question: Group }) {
  const placed = question.parts.map((part) => ({ part, at: [...path, part.key] }));
  const folded = placed.filter(
    ({ at }) =>
      isRare(keyOf(at)) &&
      valueAt(file, at) === undefined &&
      complaintsUnder(file, keyOf(at)).length === 0,
  );
  const open = placed.filter((one) => !folded.includes(one));
  return (
    <>
      {open.map(({ part, at }) => (
        <Asked key={part.key} question={part} file={file} path={at} />
      ))}
      {folded.length > 0 ? (
        <Folded title="More, if you know it">
          {() =>
            folded.map(({ part, at }) => (
              <Asked key={part.key} question={part} file={file} path={at} />
            ))
          }
        </Folded>
      ) : null}
    </>
  );
}

/** A group below others: opened to be answered, taken out whole where it may be left out. */
function Fold({ question, file, path }: Place & { readonly question: Group }) {
  const key = keyOf(path);
  const value = valueAt(file, path);
  const wrong = complaintsUnder(file, key).length;
  const needed = !question.optional && (value === undefined || wrong > 0);
  return (
    <Folded
      title={questionFor(key)}
      says={glance(value)}
      wrong={wrong}
      start={needed}
      kind="group"
      name={`${file} ${key}`}
    >
      {() => (
        <>
          {question.about ? <p class="about">{question.about}</p> : null}
          <Parts question={question} file={file} path={path} />
          {question.optional && value !== undefined ? (
            <button
              type="button"
              class="out"
              onClick={() => change({ file, path, value: undefined })}
            >
              Take it out: {questionFor(key).replace(/\?$/, "")}
            </button>
          ) : null}
        </>
      )}
    </Folded>
  );
}
