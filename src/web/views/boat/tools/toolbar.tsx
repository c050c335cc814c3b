import { Icon } from "../../../parts/icon.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { Zoom } from "../sheet/zoom.js";

/** Zoom, marking, row and mirror. */
export function Toolbar(props: {
  zoom: () => Zoom | undefined;
  readOnly: boolean;
  several: boolean;
  setSeveral: (several: boolean) => void;
  markedCount: number;
  clearMarks: () => void;
  /** Undefined: it can't be done now. */
  row: (() => void) | undefined;
  mirror: (() => void) | undefined;
  why: string | undefined;
}) {
  const words = useWordsOfBoat().boat;
  const { zoom, several, setSeveral, markedCount, why } = props;
  return (
    <div className="boat-tools" role="toolbar" aria-label={words.tools}>
      <div className="boat-tools-group">
        <button
          type="button"
          className="icon-button"
          aria-label={words.zoomOut}
          onClick={() => zoom()?.by(1 / 1.4)}
        >
          <Icon name="remove" />
        </button>
        <button
          type="button"
          className="icon-button"
          aria-label={words.zoomIn}
          onClick={() => zoom()?.by(1.4)}
        >
          <Icon name="add" />
        </button>
        <button type="button" onClick={() => zoom()?.whole()}>
          {words.wholeBoat}
        </button>
      </div>
      {!props.readOnly && (
        <div className="boat-tools-group">
          <button type="button" aria-pressed={several} onClick={() => setSeveral(!several)}>
            {words.markSeveral}
          </button>
          {markedCount > 0 && (
            <button type="button" className="quiet" onClick={props.clearMarks}>
              {words.markedCount(markedCount)} – {words.clearMarks}
            </button>
          )}
          <button type="button" disabled={!props.row} title={why} onClick={props.row}>
            {words.row}
          </button>
          <button type="button" disabled={!props.mirror} title={why} onClick={props.mirror}>
            {words.mirror}
          </button>
        </div>
      )}
    </div>
  );
}
