import type { Complaint } from "@hoopstay/core";
import { goTo } from "../ask/go-to.ts";
import { houseSections, placeSections } from "../ask/sections.ts";
import { stillNeeded } from "../ask/still-needed.ts";
import { questionFor } from "../ask/wording.ts";
import { fileNames } from "../engine/file-names.ts";
import type { FileName } from "../engine/messages.ts";
import { change } from "../session/conversation.ts";
import { answer, complaints } from "../session/state.ts";
import { Complaints } from "./complaints.tsx";

/** What is missing or wrong, each with the way to its question. */
export function ToMend() {
  const needed = [...stillNeeded("house"), ...stillNeeded("site")];
  const told = new Set(needed.map(({ file, path }) => `${fileNames[file]} ${path.join(".")}`));
  const unknown = complaints.value.filter(({ code }) => code === "key-unknown");
  const wrong = complaints.value.filter(
    (one) =>
      !unknown.includes(one) &&
      !told.has(`${one.file} ${one.key}`) &&
      !(needed.length > 0 && (one.code === "key-missing" || one.key === "(whole file)")),
  );
  return (
    <div class="to-mend" role="alert">
      <p>
        <b>
          {answer.value
            ? "The numbers below are those of before: they wait for what is missing or wrong."
            : "Nothing is worked out before this is told."}
        </b>
      </p>
      {needed.length > 0 ? (
        <>
          <p>Still to be filled in:</p>
          <ul>
            {needed.map(({ file, path }) => (
              <li key={`${file} ${path.join(".")}`}>
                <Way file={file} path={path.map(String)} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {wrong.map((one) => (
        <div key={`${one.file} ${one.key} ${one.code}`}>
          <Way file={fileOf(one)} path={(one.key ?? "").split(".")} />
          {one.code === "key-missing" ? (
            <p>Still to be filled in.</p>
          ) : (
            <Complaints complaints={[one]} />
          )}
        </div>
      ))}
      {unknown.map((one) => (
        <div key={`${one.file} ${one.key}`}>
          <Complaints complaints={[one]} />
          <button type="button" class="out" onClick={() => takeOut(one)}>
            Take {one.key} out of the {one.file}
          </button>
        </div>
      ))}
    </div>
  );
}

const fileOf = ({ file }: Complaint): FileName => (file === fileNames.site ? "site" : "house");

function takeOut(complaint: Complaint): void {
  const parts = (complaint.key ?? "").split(".");
  const path = parts.map((part) => (/^\d+$/.test(part) ? Number(part) : part));
  change({ file: fileOf(complaint), path, value: undefined });
}

/** A link to the question that asks for a key. */
function Way({ file, path }: { readonly file: FileName; readonly path: readonly string[] }) {
  const section = [...houseSections, ...placeSections].find(
    (one) => one.file === file && one.keys.includes(path[0] ?? ""),
  );
  const words = questionFor(path.join("."));
  if (!section) return <span>{words}</span>;
  return (
    <a href={`#ask-${section.id}`} onClick={() => goTo(`ask-${section.id}`, file, path)}>
      {section.title}: {words}
    </a>
  );
}
