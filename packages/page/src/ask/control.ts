import type { Path, Value } from "@hoopstay/file/value";
import type { FileName } from "../engine/messages.ts";

/** Where a question stands: a file, and the path in it. */
export interface Place {
  readonly file: FileName;
  readonly path: Path;
}

/** What every control needs: where it stands, its ids, and what it shows. */
export interface Control extends Place {
  readonly id: string;
  readonly describedBy: string | undefined;
  readonly wrong: boolean;
  readonly value: unknown;
  readonly placeholder: string;
  readonly set: (value: Value | undefined) => void;
}
