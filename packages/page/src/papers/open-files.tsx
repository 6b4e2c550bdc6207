import type { Complaint } from "@hoopstay/core";
import { useState } from "preact/hooks";
import type { FileName } from "../engine/messages.ts";
import { Complaints } from "../show/complaints.tsx";
import { openFile } from "./open-file.ts";

const asked = { house: "Open a house file", site: "Open a site file" } as const;

/** One door for each file. */
export function OpenFiles() {
  const [wrong, setWrong] = useState<readonly Complaint[]>([]);
  const take = async (input: HTMLInputElement, as: FileName): Promise<void> => {
    const file = input.files?.[0];
    if (!file) return;
    setWrong(await openFile(file, as));
    input.value = "";
  };
  return (
    <>
      <p class="row">
        {(["house", "site"] as const).map((file) => (
          <label key={file} class="file-button">
            {asked[file]}
            <input
              type="file"
              accept=".yaml,.yml,.json,.txt,text/plain,application/json"
              onChange={({ currentTarget }) => take(currentTarget, file)}
            />
          </label>
        ))}
      </p>
      {wrong.length > 0 ? (
        <div role="alert" class="to-mend">
          <p>
            <b>The file was not opened. What was here before stays.</b>
          </p>
          <Complaints complaints={wrong} />
        </div>
      ) : null}
    </>
  );
}
