import { chainStyle, holdStyle, screenStyle } from "@hoopstay/report/style";
import { render } from "preact";
import { App } from "./app.tsx";
import { begin, redo, undo } from "./session/steps.ts";
import askStyle from "./style/ask.css?inline";
import dialogStyle from "./style/dialog.css?inline";
import frameStyle from "./style/frame.css?inline";
import showStyle from "./style/show.css?inline";

// The look of the report first, what the page adds after it.
const style = document.createElement("style");
style.textContent = `${screenStyle}${holdStyle}${chainStyle}${askStyle}${showStyle}${dialogStyle}${frameStyle}`;
document.head.append(style);

const app = document.getElementById("app");
if (!app) throw new Error("the page has no place for the app");
begin();
render(<App />, app);

// In a text field the browser takes back what was typed there.
addEventListener("keydown", (event) => {
  const typing = event.target instanceof HTMLInputElement && event.target.type === "text";
  if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
  event.preventDefault();
  if (event.shiftKey) redo();
  else undo();
});
