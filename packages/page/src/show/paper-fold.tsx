import { useEffect, useState } from "preact/hooks";
import { Folded } from "../ask/folded.tsx";
import type { Paper } from "../engine/messages.ts";
import type { Made as Result } from "../session/requests.ts";
import { chain, chainIsNew, system } from "../session/state.ts";
import { paper } from "../session/steps.ts";
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
  const [made, setMade] = useState<Result | null>(null);
  const asked = JSON.stringify(which);
  // Anew once the rest is worked out, not at every keystroke.
  const studied = chain.value?.turn;
  useEffect(() => {
    let wanted = true;
    paper(JSON.parse(asked) as Paper).then((html) => {
      if (wanted) setMade(html);
    });
    return () => {
      wanted = false;
    };
  }, [asked, studied, system.value]);
  if (made === null) return <p role="status">Being worked out.</p>;
  if (typeof made !== "string") return <Complaints complaints={made} />;
  // Made by the report, which escapes what anybody typed.
  const kind = chainIsNew.value ? "sheet-part" : "sheet-part old";
  return <div class={kind} dangerouslySetInnerHTML={{ __html: made }} />;
}
