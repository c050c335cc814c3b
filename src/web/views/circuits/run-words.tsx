import type { AtSpot } from "../../../drawing/circuit-map/at-spot.js";
import { mapMm, type Spot } from "../../../drawing/circuit-map/lay-out.js";
import { fuseSymbol } from "../../../drawing/one-line/symbols.js";
import { amps, marked } from "../../../words/numbers.js";
import { useShows } from "../../app/context.js";
import { ShapeView } from "../../parts/shape-view.js";
import type { Shorten } from "../../parts/use-shorten.js";
import { useWordsOfCircuits } from "../../words/circuits.js";
import { smallMm } from "./spot-view.js";
import { runParts } from "./spot-words.js";
import { unspoken } from "./unspoken.js";

/** Name, current, size and length to cut of the run that reaches a thing, over and under its line on a wide map. */
export function RunWords({ spot, at, shorten }: { spot: Spot; at: AtSpot; shorten: Shorten }) {
  const shows = useShows();
  const words = useWordsOfCircuits();
  const { run } = at;
  const { node } = spot;
  if (!run || node.run === undefined) return null;
  const current = run.currentA === undefined ? "" : amps(run.currentA);
  const rating = run.device?.ratingA === undefined ? "" : marked(run.device.ratingA, "A");
  const room = mapMm.run - 4;
  const parts = runParts(run, words, shows);
  const line = parts.join(" · ");
  // a length cut short would be another length: where both are too long for the line it stands alone, and the size in the table
  const fits = shorten(line, room - 13, smallMm) === line;
  // Gear in a chain has its run above it, where there is no room for words: they stand at its left.
  const left = spot.x - mapMm.run + 1;
  return (
    <g transform={`translate(${left} ${spot.down})`} data-run={run.name} className="map-run" {...unspoken}>
      <title>{run.name}</title>
      <rect x={0} y={-7} width={mapMm.run - 2} height={14} className="map-hit" />
      {run.device && <ShapeView shapes={[fuseSymbol(room / 2 - 4, 0)]} />}
      <text className="map-name" x={0.5} y={-2.1} fontSize={smallMm}>
        {shorten(run.name, room - (rating === "" ? 0 : 12), smallMm, "semibold")}
      </text>
      <text className="map-small" x={room} y={-2.1} fontSize={smallMm} textAnchor="end">
        {rating}
      </text>
      <text className="map-small" x={0.5} y={6} fontSize={smallMm}>
        {fits ? line : parts.at(-1)}
      </text>
      <text className="map-small" x={room} y={6} fontSize={smallMm} textAnchor="end">
        {current}
      </text>
    </g>
  );
}
