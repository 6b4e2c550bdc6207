/** Slack, relative, for sizes read from text, which may miss a limit by rounding. */
const slack = 1e-9;

/** Whether a value is above a limit by more than rounding; at the limit it is not. */
export const exceeds = (value: number, limit: number): boolean => value > limit * (1 + slack);
