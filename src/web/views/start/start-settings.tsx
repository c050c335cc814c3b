import { lazy, Suspense, useState } from "react";
import { Icon } from "../../parts/icon.js";
import { useWordsOfSettings } from "../../words/settings.js";

const SettingsPanel = lazy(async () => ({
  default: (await import("../../app/settings-panel.js")).SettingsPanel,
}));

/** Settings on the start view, folded away until they are wanted. */
export function StartSettings() {
  const words = useWordsOfSettings().shell;
  const [open, setOpen] = useState(false);
  return (
    <div className="start-settings">
      <button
        type="button"
        className="icon-button"
        aria-expanded={open}
        aria-label={words.settings}
        onClick={() => setOpen(!open)}
      >
        <Icon name="settings" />
      </button>
      {open && (
        <div className="panel start-panel">
          <Suspense fallback={words.loading}>
            <SettingsPanel />
          </Suspense>
        </div>
      )}
    </div>
  );
}
