import type { Complaint } from "@hoopstay/core";
import { houseSections, placeSections } from "../ask/sections.ts";
import { questionFor } from "../ask/wording.ts";
import { fileNames } from "../engine/file-names.ts";
import { change } from "../work/steps.ts";
import { answer, complaints } from "../work/work.ts";
import { Complaints } from "./complaints.tsx";

/** What is missing or wrong, each with the way to its question. */
export function ToMend() {
  const missing = complaints.value.filter(({ code }) => code === "key-missing");
  const unknown = complaints.value.filter(({ code }) => code === "key-unknown");
  const wrong = complaints.value.filter((one) => !missing.includes(one) && !unknown.includes(one));
  return (
    <div class="to-mend" role="alert">
      <p>
        <b>
          {answer.value
            ? "The numbers below are those of before: they wait for what is missing or wrong."
            : "Nothing is worked out before this is told."}
        </b>
      </p>
      {missing.length > 0 ? (
        <>
          <p>Still to be filled in:</p>
          <ul>
            {missing.map((one) => (
              <li key={`${one.file} ${one.key}`}>
                <Way complaint={one} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {wrong.map((one) => (
        <div key={`${one.file} ${one.key} ${one.code}`}>
          <Way complaint={one} />
          <Complaints complaints={[one]} />
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

function takeOut({ file, key = "" }: Complaint): void {
  const path = key.split(".").map((part) => (/^\d+$/.test(part) ? Number(part) : part));
  change({ file: file === fileNames.site ? "site" : "house", path, value: undefined });
}

/** A link to the section that asks for a key. */
function Way({ complaint: { file, key = "" } }: { readonly complaint: Complaint }) {
  const [top = ""] = key.split(".");
  const section = [...houseSections, ...placeSections].find(
    (one) => fileNames[one.file] === file && one.keys.includes(top),
  );
  const words = questionFor(key);
  return section ? (
    <a href={`#ask-${section.id}`}>
      {section.title}: {words}
    </a>
  ) : (
    <span>{words}</span>
  );
}
