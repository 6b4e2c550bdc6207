import { cite, FOOT, type GustLandmark } from "@hoopstay/core";

const milesPerHour = (5280 * FOOT) / 3600;
const citation = cite(
  "us-wind-words",
  "gusts of about 46 to 57 mph: advisory; 58 mph and more: warning; offices differ",
  "read",
);

/** Words of US forecasts, with the gusts (m/s) they usually stand for. Offices differ. */
export const forecastWords: readonly GustLandmark[] = [
  { words: "wind advisory, usually", from: 46 * milesPerHour, to: 57 * milesPerHour, citation },
  { words: "high wind warning, usually", from: 58 * milesPerHour, to: null, citation },
];
