import type { CircuitMap, Spot } from "../../../drawing/circuit-map/lay-out.js";
import { legApartMm, startMm } from "../../../drawing/circuit-map/lines.js";
import { unspoken } from "./unspoken.js";

const wayMm = 44;

/** Frames round panels with their ways, rails inside them, and round boxes, on a wide map. */
export function Frames({ map }: { map: CircuitMap }) {
  if (map.shape === "narrow") return null;
  return (
    <g {...unspoken}>
      {map.spots.map((spot, index) => {
        if (spot.node.kind === "panel")
          return <PanelFrame key={spot.id} map={map} spot={spot} index={index} />;
        if (spot.node.kind !== "box") return null;
        const low = lastChild(map, index) ?? spot.down;
        return (
          <rect
            key={spot.id}
            className="map-frame"
            x={spot.x}
            y={spot.down - 6.2}
            width={spot.widthMm - 1}
            height={low - spot.down + 13}
            rx={2}
          />
        );
      })}
    </g>
  );
}

function PanelFrame({ map, spot, index }: { map: CircuitMap; spot: Spot; index: number }) {
  const ways = map.spots.filter(({ parent, node }) => parent === index && node.kind === "way");
  const lowWay = ways.at(-1);
  const low = (lowWay && lowestOf(map, map.spots.indexOf(lowWay))) ?? spot.down + 8;
  const rail = spot.x + startMm.panel;
  const last = lastChild(map, index);
  return (
    <>
      <rect
        className="map-frame"
        x={spot.x - 0.5}
        y={spot.down - 15.8}
        width={startMm.panel + 4 + wayMm}
        height={low - spot.down + 17.2}
      />
      {last !== undefined && (
        <>
          <path className="map-rail" d={`M${rail} ${spot.down}V${last}`} />
          <path
            className="map-rail"
            d={`M${rail - legApartMm} ${spot.down + legApartMm}V${last + legApartMm}`}
          />
        </>
      )}
    </>
  );
}

const lowestOf = (map: CircuitMap, index: number) => map.spots[index]?.bottom;

function lastChild(map: CircuitMap, index: number): number | undefined {
  return map.spots.findLast(({ parent }) => parent === index)?.down;
}
