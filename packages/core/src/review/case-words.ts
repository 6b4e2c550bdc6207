/** What a case is, in words. */
export interface CaseWords {
  readonly id: string;
  readonly loadCase: number;
  readonly direction: string;
  readonly reading: string;
  readonly set: string;
  readonly inside: string;
  readonly weight: string;
}

const sides: Readonly<Record<string, string>> = {
  "+x": "from the left",
  "-x": "from the right",
  "+y": "from the back",
  "-y": "from the front",
};

/** Where the wind comes from, in owner's words; a direction names where it goes to. */
export const windFrom = (direction: string): string => sides[direction.slice(0, 2)] ?? direction;
