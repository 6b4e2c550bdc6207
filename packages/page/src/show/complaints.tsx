import type { Complaint } from "@hoopstay/core";

/** Complaints where no field is at hand: what was given, what is expected, how to mend it. */
export function Complaints({ complaints }: { readonly complaints: readonly Complaint[] }) {
  if (complaints.length === 0) return <p>It could not be made.</p>;
  return (
    <ul class="complaints">
      {complaints.map(({ code, file, line, key, given, expected, mend }) => (
        <li key={`${code} ${file} ${line} ${key}`}>
          <b>
            {[file, line === undefined ? "" : `line ${line}`, key].filter(Boolean).join(", ") ||
              code}
          </b>
          : {given === undefined ? "" : `given ${given}; `}expected {expected}. {mend}
        </li>
      ))}
    </ul>
  );
}
