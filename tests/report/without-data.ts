/** A page without the one element of data that it may carry, which no sign can leave. */
export const withoutData = (html: string): string =>
  html.replace(/<script type="application\/json" id="made-from">[^<]*<\/script>/, "");
