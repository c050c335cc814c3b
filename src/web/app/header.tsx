import { Icon } from "../parts/icon.js";
import { Mark } from "../parts/mark.js";
import { PanelButton } from "../parts/panel-button.js";
import { PlaceLink } from "../parts/place-link.js";
import { ReadOut, useReadOut } from "../parts/read-out.js";
import { aboutSentence } from "../parts/step-words.js";
import { ViewLink } from "../parts/view-link.js";
import type { StepAbout } from "../state/keep/records.js";
import { useWordsOfLog } from "../words/log.js";
import { useWordsOfWalk } from "../words/walk.js";
import { usePlan, usePlanStore, useWords } from "./context.js";
import { FileTools } from "./file-tools.js";
import { KeepingMark } from "./keeping-mark.js";
import { SettingsPanel } from "./settings-panel.js";
import { useUndoKeys } from "./undo-keys.js";
import { toolIds, type ViewId } from "./view-ids.js";
import { askForWalk } from "./walk-start.js";

/** Whose plan it is, whether it is kept, undo and redo, tools and settings. */
export function Header({ view }: { view: ViewId }) {
  const words = useWords();
  const { walk } = useWordsOfWalk();
  const name = usePlan(({ record }) => record.name);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  return (
    <header className="header">
      <PlaceLink to={{ at: "start" }} className="home" title={words.shell.toStart}>
        <Mark sizePx={30} />
        <span className="away">{words.shell.toStart}</span>
      </PlaceLink>
      <div className="header-name">
        <h1>
          <bdi>{name}</bdi>
        </h1>
        {readOnly ? <span className="keeping">{words.shell.readOnly}</span> : <KeepingMark />}
      </div>
      <UndoButtons />
      <ViewLink view="print" className="header-print" current={view === "print"}>
        {words.views.names.print}
      </ViewLink>
      <PanelButton icon="more" label={words.shell.tools}>
        {(close) => (
          <>
            <nav className="panel-links" aria-label={words.shell.tools}>
              {toolIds.map((id) => (
                <ViewLink key={id} view={id} current={id === view} onGo={close}>
                  {words.views.names[id]}
                </ViewLink>
              ))}
            </nav>
            <button
              type="button"
              onClick={() => {
                close();
                askForWalk();
              }}
            >
              {walk.start}
            </button>
            <FileTools />
          </>
        )}
      </PanelButton>
      <PanelButton icon="settings" label={words.shell.settings}>
        {() => <SettingsPanel />}
      </PanelButton>
    </header>
  );
}

function UndoButtons() {
  const words = useWordsOfLog();
  const store = usePlanStore();
  const undo = usePlan((state) => state.undo);
  const redo = usePlan((state) => state.redo);
  const [said, say] = useReadOut();
  const go = (direction: "undo" | "redo") => {
    const what = store.get()[direction];
    store[direction]();
    const told = direction === "undo" ? words.shell.undone : words.shell.redone;
    if (what) say(told(aboutSentence(what, words)));
  };
  useUndoKeys(go);
  const label = (what: StepAbout | undefined, plain: string, full: (what: string) => string) =>
    what ? full(aboutSentence(what, words)) : plain;
  return (
    <div className="undo">
      <button
        type="button"
        className="icon-button"
        aria-label={label(undo, words.shell.undo, words.shell.undoWhat)}
        disabled={!undo}
        onClick={() => go("undo")}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        className="icon-button"
        aria-label={label(redo, words.shell.redo, words.shell.redoWhat)}
        disabled={!redo}
        onClick={() => go("redo")}
      >
        <Icon name="redo" />
      </button>
      <ReadOut said={said} />
    </div>
  );
}
