/** How the browser is started for tests: without the things it would otherwise ask of the network. */
export const chromiumArguments = [
  "--no-sandbox",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // parts of the browser's own frame, which no test looks at, and what the driver leaves out itself: the last list given is the one that holds
  "--disable-features=PreloadTopChromeWebUI,HttpsUpgrades,LensOverlay,MediaRouter,PaintHolding,ThirdPartyStoragePartitioning,OptimizationHints,NetworkTimeServiceQuerying,AimEnabled,PreconnectToSearch",
];
export const chromiumPath = "/usr/bin/chromium";
