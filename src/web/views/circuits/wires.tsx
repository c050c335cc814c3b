import type { CircuitMap, Spot } from "../../../drawing/circuit-map/lay-out.js";
import { type Legs, legsTo, passing } from "../../../drawing/circuit-map/lines.js";
import type { TracedSpot } from "../../../drawing/circuit-map/traced.js";
import { conductorColour } from "../../../drawing/palette.js";
import type { Point } from "../../../drawing/shapes.js";
import { cssColour } from "../../parts/shape-view.js";
import { unspoken } from "./unspoken.js";

/** All lines of the map: what is traced glows under them, then each leg in the colour of its conductor. */
export function Wires({ map, traced }: { map: CircuitMap; traced: readonly TracedSpot[] }) {
  const lines = map.spots.flatMap((spot, index) => {
    const legs = legsTo(map, spot);
    return legs ? [{ spot, legs, lit: traced[index] }] : [];
  });
  return (
    <g {...unspoken}>
      {lines.map(({ spot, legs, lit }) => (
        <g key={spot.id}>
          {lit?.back === true && <path className="lit-back" d={data(legs.back)} />}
          {lit?.out === true && <path className="lit-out" d={data(legs.out)} />}
        </g>
      ))}
      {map.spots.map((spot, index) => (
        <path
          key={spot.id}
          className={traced[index]?.back === true ? "lit-back" : "unlit"}
          d={data(passing(map, index))}
        />
      ))}
      <g className="wires">
        {map.spots.map((spot, index) => (
          <Wire key={spot.id} along={passing(map, index)} />
        ))}
        {lines.map(({ spot, legs }) => (
          <Pair key={spot.id} spot={spot} legs={legs} />
        ))}
      </g>
    </g>
  );
}

function Pair({ spot: { node }, legs }: { spot: Spot; legs: Legs }) {
  const colours = node.run?.colours;
  return (
    <>
      <Wire along={legs.back} colour={colours?.return} hull={node.run?.return === "hull"} />
      <Wire along={legs.out} colour={colours?.out} />
    </>
  );
}

/** One conductor: a line of ink, with its colour inside where the plan names one. */
function Wire({
  along,
  colour,
  hull = false,
}: {
  along: readonly Point[];
  colour?: string | undefined;
  hull?: boolean;
}) {
  const known = colour === undefined ? undefined : conductorColour(colour);
  const d = data(along);
  return (
    <>
      <path className={hull ? "wire hull" : known ? "wire" : "wire plain"} d={d} />
      {known && <path className="wire-inside" d={d} style={{ stroke: cssColour(known) }} />}
    </>
  );
}

const data = (along: readonly Point[]) =>
  along.length === 0 ? undefined : `M${along.map(({ x, y }) => `${x} ${y}`).join("L")}`;
