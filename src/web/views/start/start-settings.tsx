import { lazy, Suspense, useState } from "react";
import { useWords } from "../../app/context.js";
import { Icon } from "../../parts/icon.js";

const SettingsPanel = lazy(async () => ({
  default: (await import("../../app/settings-panel.js")).SettingsPanel,
}));

/** Settings on the start view, folded away until they are wanted. */
export function StartSettings() {
  const words = useWords().shell;
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
