/** The browser that the page is tried, measured and pictured in. */
export const chromiumPath = "/usr/bin/chromium";
/** How it is started: without the things it would otherwise ask of the network. */
export const chromiumArguments = [
  "--no-sandbox",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
