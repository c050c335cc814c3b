import { useState } from "react";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { lengthWords } from "../../../../words/numbers.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { BoatScene } from "../model/scene.js";
import { useRunFigures } from "../run-figures.js";
import { placeWords } from "../sheet/place-words.js";

interface WhereListProps {
  readonly scene: BoatScene;
  readonly shows: Shows;
  readonly runsShown: boolean;
  readonly select: (name: string) => void;
}

/** The drawing in words: everything that is on it, and where. Its lines are made when it is opened. */
export function WhereList(props: WhereListProps) {
  const words = useWordsOfBoat().boat;
  const [open, setOpen] = useState(false);
  return (
    <details className="boat-where" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.whereList}</summary>
      {open && <Lines {...props} />}
    </details>
  );
}

function Lines({ scene, shows, runsShown, select }: WhereListProps) {
  const words = useWordsOfBoat().boat;
  const { strengths, labels } = useRunFigures();
  const length = (lengthM: number) => lengthWords(lengthM, shows);
  const placed = scene.things.flatMap((thing) => (thing.at ? [{ thing, at: thing.at }] : []));
  const points = scene.features.flatMap((feature) => ("at" in feature ? [feature] : []));
  return (
    <>
      <div className="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.thing}</th>
              <th scope="col">{words.kind}</th>
              <th scope="col">{words.place}</th>
              <th scope="col">{words.size}</th>
            </tr>
          </thead>
          <tbody>
            {placed.map(({ thing, at }) => (
              <tr key={thing.name}>
                <th scope="row">
                  <button type="button" className="quiet boat-name" onClick={() => select(thing.name)}>
                    <bdi>{thing.name}</bdi>
                  </button>
                </th>
                <td>{words.kinds[thing.kind]}</td>
                <td>
                  {placeWords(at, shows, words)}
                  {thing.face && `, ${words.onFace(thing.face.name)}`}
                </td>
                <td>{thing.sizeKnown ? thing.sizeM.map(length).join(" × ") : words.sizeAssumed}</td>
              </tr>
            ))}
            {points.map((feature) => (
              <tr key={`${feature.kind} ${feature.name} ${feature.at.join(" ")}`}>
                <th scope="row">
                  <bdi>{feature.name}</bdi>
                </th>
                <td>{words.kinds[feature.kind]}</td>
                <td>{placeWords(feature.at, shows, words)}</td>
                <td>{feature.acrossM > 0 ? length(feature.acrossM) : ""}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {runsShown && scene.runs.drawn.length > 0 && (
        <div className="wide">
          <table>
            <thead>
              <tr>
                <th scope="col">{words.runHeading}</th>
                <th scope="col">{words.wayHeading}</th>
                <th scope="col">{words.figureHeading}</th>
              </tr>
            </thead>
            <tbody>
              {scene.runs.drawn.map(({ name, stops, course }) => (
                <tr key={name}>
                  <th scope="row">
                    <button type="button" className="quiet boat-name" onClick={() => select(name)}>
                      <bdi>{name}</bdi>
                    </button>
                  </th>
                  <td>
                    {stops.join(" → ")}; {words.way[course]}
                  </td>
                  <td>{labels?.get(name) ?? (strengths ? words.noRunFigure : "")}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {runsShown && scene.runs.undrawn.length > 0 && (
        <section>
          <h3>{words.undrawn}</h3>
          <ul>
            {scene.runs.undrawn.map(({ name, missing }) => (
              <li key={name}>{words.undrawnWhy(name, missing.join(", "))}</li>
            ))}
          </ul>
        </section>
      )}
      <p className="hint">
        {words.lineHeading}: {scene.drawn.form.lines.map(({ name }) => name).join(", ")}
      </p>
    </>
  );
}
