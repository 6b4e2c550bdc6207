import { useEffect, useRef, useState } from "preact/hooks";

/**
 * The text of a field while it is typed: what stands in the file wins, except over what is being
 * typed and cannot stand there yet.
 */
export function useTypedText(value: unknown): {
  readonly text: string;
  readonly type: (text: string) => void;
  readonly rest: () => void;
} {
  const stands = value === undefined || value === null ? "" : String(value);
  const [text, setText] = useState(stands);
  const typing = useRef(false);
  useEffect(() => {
    if (!typing.current) setText(stands);
  }, [stands]);
  return {
    text,
    type: (next) => {
      typing.current = true;
      setText(next);
    },
    rest: () => {
      typing.current = false;
    },
  };
}
