import { amps, marked, percent, volts } from "../../../words/numbers.js";
import { useShows } from "../../app/context.js";
import { useWordsOfCircuits } from "../../words/circuits.js";
import { nameOf, runLine, selectionOf } from "./spot-words.js";
import type { MapPicture } from "./use-map.js";

/** The whole map in words and figures: what hangs on what, by which run, and what stands there. */
export function MapTable({ picture, select }: { picture: MapPicture; select: (name: string) => void }) {
  const words = useWordsOfCircuits();
  const shows = useShows();
  const { circuits, slip } = words;
  const { spots } = picture.map;
  return (
    <details className="map-table">
      <summary>{circuits.asTable}</summary>
      <div className="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{circuits.thing}</th>
              <th scope="col">{circuits.kind}</th>
              <th scope="col">{circuits.hangsOn}</th>
              <th scope="col">{circuits.by}</th>
              <th scope="col">{circuits.rating}</th>
              <th scope="col" className="number">
                {circuits.voltage}
              </th>
              <th scope="col" className="number">
                {circuits.current}
              </th>
              <th scope="col" className="number">
                {circuits.share}
              </th>
            </tr>
          </thead>
          <tbody>
            {spots.map((spot, index) => {
              const at = picture.at[index] ?? { devices: [] };
              const parent = spots[spot.parent]?.node;
              const ratings = at.devices.flatMap(({ ratingA }) =>
                ratingA === undefined ? [] : [marked(ratingA, "A")],
              );
              const made = at.run ? [runLine(at.run, words, shows)] : [];
              return (
                <tr key={spot.id}>
                  <th scope="row">
                    <button type="button" className="quiet" onClick={() => select(selectionOf(spot.node))}>
                      <bdi>{nameOf(spot.node, words)}</bdi>
                    </button>
                  </th>
                  <td>{spot.node.kind === "reference" ? "" : slip.kinds[spot.node.kind]}</td>
                  <td>
                    <bdi>{parent ? nameOf(parent, words) : ""}</bdi>
                  </td>
                  <td>
                    {at.run && (
                      <button type="button" className="quiet" onClick={() => select(at.run?.name ?? "")}>
                        <bdi>{at.run.name}</bdi>
                      </button>
                    )}
                  </td>
                  <td>{[...made, ...ratings].filter((part) => part !== "").join(" · ")}</td>
                  <td className="number">{volts(at.voltageV)}</td>
                  <td className="number">{amps(at.currentA ?? at.run?.currentA)}</td>
                  <td className="number">{percent(at.dropShare)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
}
