import type { Complaint } from "@hoopstay/core";
import { useState } from "preact/hooks";
import type { FileName, Paper } from "../engine/messages.ts";
import { forecastGust } from "../session/conversation.ts";
import { isOld, names, texts } from "../session/state.ts";
import { clear, paper } from "../session/steps.ts";
import { Complaints } from "../show/complaints.tsx";
import { OpenFiles } from "./open-files.tsx";
import { saveFile } from "./save-file.ts";
import { Sheet } from "./sheet.tsx";

interface Named {
  readonly title: string;
  readonly says: string;
  readonly file: string;
  readonly paper: () => Paper;
}

const papers: readonly Named[] = [
  {
    title: "Report",
    says: "Lift, tip, slide and what holds it, with every step of the working.",
    file: "report.html",
    paper: () => ({ name: "report" }),
  },
  {
    title: "Report of the load path",
    says: "What goes first, link by link, with its working.",
    file: "load-path.html",
    paper: () => ({ name: "first" }),
  },
  {
    title: "Move card",
    says: "One page for the person on the ground.",
    file: "move-card.html",
    paper: () => ({ name: "card" }),
  },
  {
    title: "Storm ladder",
    says: "What to do at which forecast gust, on one page.",
    file: "storm-ladder.html",
    paper: () => ({ name: "ladder", forecast: forecastGust() }),
  },
];

/** Files and papers: open, save, print, and take everything off this device. */
export function PapersView() {
  const [shown, setShown] = useState<{ of: Named; html: string } | null>(null);
  const [making, setMaking] = useState<string | null>(null);
  const [wrong, setWrong] = useState<readonly Complaint[] | null>(null);
  const make = async (of: Named): Promise<void> => {
    setMaking(of.title);
    setWrong(null);
    const made = await paper(of.paper());
    setMaking(null);
    if (typeof made === "string") setShown({ of, html: made });
    else setWrong(made);
  };
  const save = (file: FileName): void => {
    const text = texts.value?.[file];
    if (text !== undefined) saveFile(names.value[file], text, "application/yaml");
  };
  return (
    <section aria-labelledby="view-title">
      <h2 id="view-title">Papers</h2>
      <h3>To print or to send</h3>
      <ul class="papers">
        {papers.map((of) => (
          <li key={of.title}>
            <button
              type="button"
              disabled={isOld.value || making !== null}
              onClick={() => make(of)}
            >
              {of.title}
            </button>{" "}
            {of.says}
          </li>
        ))}
      </ul>
      <p role="status">
        {making === null ? "" : `${making}: being made. It takes some seconds.`}
        {isOld.value
          ? "First mend what is marked: a paper is made of what holds together only."
          : ""}
      </p>
      {wrong ? <Complaints complaints={wrong} /> : null}
      {shown ? (
        <Sheet
          title={shown.of.title}
          file={shown.of.file}
          html={shown.html}
          close={() => setShown(null)}
        />
      ) : null}
      <h3>Your files</h3>
      <p>
        The same two files the command line reads. What you did not change stays as it was, to the
        letter.
      </p>
      <p class="row">
        {(["house", "site"] as const).map((file) => (
          <button type="button" key={file} onClick={() => save(file)}>
            Save the {file} file ({names.value[file]})
          </button>
        ))}
      </p>
      <OpenFiles />
      <h3>On this device</h3>
      <p>
        The work is kept here between visits, in this browser's own storage, and nowhere else. Save
        the files too: browsers clear their storage.
      </p>
      <p>
        <button
          type="button"
          class="out"
          onClick={() => {
            if (confirm("Take the house, the place and everything kept off this device?")) {
              clear();
              location.hash = "#start";
            }
          }}
        >
          Clear everything
        </button>
      </p>
    </section>
  );
}
