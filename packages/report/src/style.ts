export { chainStyle } from "./style/chain.ts";
export { holdStyle } from "./style/hold.ts";
export { screenStyle } from "./style/screen.ts";
