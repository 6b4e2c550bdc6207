import { type Chapter, type Citation, type Grade, type SourceId, sources } from "@hoopstay/core";

const shortGrades: Record<Grade, string> = {
  read: "read",
  "second-hand": "second-hand",
  memory: "from memory",
  derived: "derived",
  judgement: "judgement",
};

/** A source of the report: its number and how its places are known. */
export interface NumberedSource {
  readonly id: SourceId;
  readonly number: number;
  readonly title: string;
  readonly edition: string;
  readonly publisher: string;
  readonly grades: readonly string[];
}

/** Sources in the order of first use, numbered from one. */
export class Bibliography {
  readonly #grades = new Map<SourceId, Set<Grade>>();
  readonly #numbers = new Map<SourceId, number>();

  constructor(citations: readonly Citation[], chapters: readonly Chapter[]) {
    const inSteps = chapters.flatMap(({ steps }) => steps.map(({ formula }) => formula.citation));
    for (const { source, grade } of [...citations, ...inSteps]) {
      const grades = this.#grades.get(source) ?? new Set();
      this.#grades.set(source, grades.add(grade));
      if (!this.#numbers.has(source)) this.#numbers.set(source, this.#numbers.size + 1);
    }
  }

  /** "[3] table 26.10-1 (read)"; the number is the one in the list of sources. */
  mention({ source, place, grade }: Citation): string {
    const end = shortGrades[grade];
    return `[${this.#numbers.get(source)}] ${place === "" ? "" : `${place} `}(${end})`;
  }

  get sources(): NumberedSource[] {
    return [...this.#numbers].map(([id, number]) => {
      const { title, edition, publisher } = sources[id];
      const grades = [...(this.#grades.get(id) ?? [])].map((grade) => shortGrades[grade]);
      return { id, number, title, edition, publisher, grades };
    });
  }
}

/** What the grade words mean. */
export const gradeKey = shortGrades;
