import { readQuantity } from "@hoopstay/core";
import { forecast, ladder, system } from "../session/state.ts";
import { tellForecast } from "../session/steps.ts";

/** Today's forecast gust on the ladder of what to do when. */
export function Storm() {
  const typed = forecast.value.trim();
  const read = typed === "" ? null : readQuantity(typed, "speed");
  const wrong = read !== null && !(read.ok && read.value > 0);
  const unit = system.value === "us" ? "mph" : "m/s";
  return (
    <section aria-labelledby="storm-title">
      <h2 id="storm-title">Storm</h2>
      <div class={wrong ? "field wrong" : "field"}>
        <label for="forecast">What gust is forecast?</label>
        <p class="about" id="forecast-about">
          The strongest gust of the hours to come, with its unit. A mean wind is no gust.
        </p>
        <input
          id="forecast"
          type="text"
          autocomplete="off"
          maxLength={30}
          placeholder={`such as 45 ${unit}`}
          aria-describedby={wrong ? "forecast-wrong forecast-about" : "forecast-about"}
          aria-invalid={wrong}
          value={forecast.value}
          onInput={({ currentTarget }) => tellForecast(currentTarget.value)}
        />
        {wrong ? (
          <p class="wrong-words" id="forecast-wrong">
            {read.ok ? "Expected: a gust above zero." : `Expected: ${read.expected}. ${read.mend}`}
          </p>
        ) : null}
      </div>
      {ladder.value === null ? (
        <p role="status">Being worked out.</p>
      ) : (
        // Made by the report, which escapes what anybody typed.
        <div class="sheet-part" dangerouslySetInnerHTML={{ __html: ladder.value }} />
      )}
    </section>
  );
}
