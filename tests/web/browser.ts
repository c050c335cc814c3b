/** How the browser is started for tests: without the things it would otherwise ask of the network. */
export const chromiumArguments = [
  "--no-sandbox",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
export const chromiumPath = "/usr/bin/chromium";
