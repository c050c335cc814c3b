import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app/app.js";
import { PreferencesProvider } from "./app/context.js";
import { startKeepingOffline } from "./app/offline.js";
import { PreferenceStore, smallStorage } from "./state/preferences.js";
import "./looks/looks.css";

const page = document.getElementById("page");
if (!page) throw new RangeError("an element with the id page required");

const preferences = new PreferenceStore(smallStorage());
createRoot(page).render(
  <StrictMode>
    <PreferencesProvider store={preferences}>
      <App />
    </PreferencesProvider>
  </StrictMode>,
);
startKeepingOffline();
