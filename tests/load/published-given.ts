/** What a published case gives, numbers turned from the printed unit to SI. */
export interface Given {
  has(key: string): boolean;
  number(key: string): number;
  numbers(key: string): number[];
  text(key: string): string;
}
