import { useId, useRef, useState } from "react";
import type { Figures } from "../../../core/figures-types.js";
import { useFigures, usePlan } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { cornerName } from "../../parts/corner-name.js";
import { Icon } from "../../parts/icon.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfCircuits } from "../../words/circuits.js";
import { MapTable } from "./map-table.js";
import { MapView } from "./map-view.js";
import { TraceTable } from "./trace-table.js";
import { useMapPicture } from "./use-map.js";
import { pxPerMm, useWidth } from "./use-window.js";

/** Under this width the map is drawn as lines set in, which need no panning [mm]. */
const narrowMm = 205;
const scales = { least: 0.5, most: 3, step: 1.25 } as const;
/** At first sight a wide map is as small as this at the most, to show gear and battery at once: its words can still be read. */
const leastAtFirst = 0.75;

/** The circuits: what hangs on what, with voltage, current and rating at each point, and both legs of what is selected. */
export function View() {
  const words = useWordsOfCircuits();
  const figures = useFigures();
  return (
    <div className="circuits stack">
      <h2 className="away">{words.views.names.circuits}</h2>
      {figures ? <Circuits figures={figures} /> : <p>{words.shell.workingOut}</p>}
    </div>
  );
}

function Circuits({ figures }: { figures: Figures }) {
  const words = useWordsOfCircuits();
  const [selected, select] = useSelection();
  const fresh = usePlan((state) => state.fresh || state.triedOut !== undefined);
  const [cornerName, setCorner] = useState("nominal");
  const [chosen, setScale] = useState<number>();
  const first = useRef<number>(undefined);
  const place = useRef<HTMLDivElement>(null);
  const scroller = useRef<HTMLDivElement>(null);
  const width = useWidth(place);
  const px = pxPerMm();
  const roomMm = (width ?? 1000) / px;
  const shape = roomMm < narrowMm ? "narrow" : "wide";
  const corner = figures.corners.find(({ name }) => name === cornerName) ?? figures.corners[0];
  const picture = useMapPicture(
    figures,
    corner?.name ?? "",
    shape,
    Math.max(roomMm / (shape === "narrow" ? (chosen ?? 1) : 1), 60),
    selected,
  );
  const fitting = roomMm / picture.map.widthMm;
  // once, so that a slip that opens beside it does not draw the map smaller
  if (width !== undefined && shape === "wide") first.current ??= Math.min(Math.max(fitting, leastAtFirst), 1);
  const scale = chosen ?? (shape === "wide" ? first.current : undefined) ?? 1;
  const zoom = (how: "larger" | "smaller" | "fit" | number) => {
    const fit = shape === "narrow" ? 1 : fitting;
    const wanted =
      how === "fit"
        ? fit
        : scale * (how === "larger" ? scales.step : how === "smaller" ? 1 / scales.step : how);
    setScale(Math.min(Math.max(wanted, scales.least), scales.most));
  };
  const trace = (
    <TraceTable
      figures={figures}
      corner={corner?.name ?? ""}
      gear={picture.trace?.gear ?? []}
      open={shape === "wide"}
      select={select}
    />
  );
  return (
    <>
      <div className="map-tools row">
        <CornerChoice figures={figures} chosen={corner?.name ?? ""} onChoose={setCorner} />
        <div className="map-zoom">
          <button
            type="button"
            className="icon-button"
            aria-label={words.circuits.smaller}
            onClick={() => zoom("smaller")}
          >
            <Icon name="remove" />
          </button>
          <button type="button" className="quiet" onClick={() => zoom("fit")}>
            {words.circuits.fit}
          </button>
          <button
            type="button"
            className="icon-button"
            aria-label={words.circuits.larger}
            onClick={() => zoom("larger")}
          >
            <Icon name="add" />
          </button>
        </div>
      </div>
      {corner?.status === "collapsed" && <p className="notice">{words.circuits.collapsed}</p>}
      {shape === "narrow" && trace}
      <p id="map-hint" className="away">
        {words.circuits.mapHint}
      </p>
      <div ref={place} aria-busy={!fresh}>
        {picture.map.spots.length === 0 ? (
          <div className="page-note">
            <p>{words.circuits.emptyMap}</p>
            <ViewLink view="gear">{words.circuits.toLists}</ViewLink>
          </div>
        ) : (
          <MapView
            picture={picture}
            pxOfMm={px * scale}
            scroller={scroller}
            selected={selected}
            select={select}
            zoom={zoom}
          />
        )}
      </div>
      {shape === "wide" && trace}
      <MapTable picture={picture} select={select} />
    </>
  );
}

function CornerChoice(props: { figures: Figures; chosen: string; onChoose: (name: string) => void }) {
  const words = useWordsOfCircuits();
  const id = useId();
  return (
    <div className="map-corner">
      <label htmlFor={id}>{words.circuits.corner}</label>
      <select id={id} value={props.chosen} onChange={(event) => props.onChoose(event.target.value)}>
        {props.figures.corners.map(({ name }) => (
          <option key={name} value={name}>
            {cornerName(name, words)}
          </option>
        ))}
      </select>
    </div>
  );
}
