import type { Complaint } from "@hoopstay/core";
import { useEffect, useState } from "preact/hooks";
import { Folded } from "../ask/folded.tsx";
import type { Paper } from "../engine/messages.ts";
import { paper } from "../work/steps.ts";
import { system, turn } from "../work/work.ts";
import { Complaints } from "./complaints.tsx";

/** A part of the report, made when it is opened and made anew when the house changes. */
export function PaperFold({
  title,
  paper: which,
}: {
  readonly title: string;
  readonly paper: Paper;
}) {
  return <Folded title={title}>{() => <Made paper={which} />}</Folded>;
}

export function Made({ paper: which }: { readonly paper: Paper }) {
  const [made, setMade] = useState<string | readonly Complaint[] | null>(null);
  const asked = JSON.stringify(which);
  useEffect(() => {
    let wanted = true;
    paper(JSON.parse(asked) as Paper).then((html) => {
      if (wanted) setMade(html);
    });
    return () => {
      wanted = false;
    };
  }, [asked, turn.value, system.value]);
  if (made === null) return <p role="status">Being worked out.</p>;
  if (typeof made !== "string") return <Complaints complaints={made} />;
  // Made by the report, which escapes what anybody typed.
  return <div class="sheet-part" dangerouslySetInnerHTML={{ __html: made }} />;
}
