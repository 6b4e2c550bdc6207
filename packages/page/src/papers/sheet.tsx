import { useEffect, useRef } from "preact/hooks";
import { saveFile } from "./save-file.ts";

/** A paper over the page, to read, print or save. Nothing in it can run. */
export function Sheet({
  title,
  file,
  html,
  close,
}: {
  readonly title: string;
  readonly file: string;
  readonly html: string;
  readonly close: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const frame = useRef<HTMLIFrameElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} class="paper" aria-labelledby="paper-title" onClose={close}>
      <div class="bar">
        <h2 id="paper-title">{title}</h2>
        <button type="button" onClick={() => frame.current?.contentWindow?.print()}>
          Print
        </button>
        <button type="button" onClick={() => saveFile(file, html, "text/html")}>
          Save
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <iframe ref={frame} title={title} sandbox="allow-same-origin allow-modals" srcdoc={html} />
    </dialog>
  );
}
