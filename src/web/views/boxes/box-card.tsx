import { useState } from "react";
import { checkEntries, type EntryFault } from "../../../core/box/check-entries.js";
import { type Placed, usualRoom } from "../../../core/box/entry-rules.js";
import type { BoxFigures } from "../../../core/box/plan-boxes.js";
import { boxProblemWords, caliperWords, drillWords, holeWords } from "../../../words/layout-words.js";
import { usePlan, usePlanStore, useShows } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { LevelMark } from "../../parts/level-mark.js";
import { useLayoutWords } from "../../parts/use-layout-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfBoxes } from "../../words/boxes.js";
import { FaceView } from "./face-view.js";
import { placeAgainEdits, placeEdits } from "./place-edits.js";
import { TellInside } from "./tell-inside.js";

/** One box: how it is made, its faces, what binds, its holes as a table, the order of drilling. */
export function BoxCard({ box }: { box: BoxFigures }) {
  const words = useWordsOfBoxes();
  const told = useLayoutWords();
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const [, select] = useSelection();
  const shows = useShows();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [tried, setTried] = useState<{ of: BoxFigures; entry: Placed }>();
  const [refused, setRefused] = useState<string>();
  const { body, layout } = box;
  const draft = tried?.of === box ? tried.entry : undefined;
  const entries = layout?.entries.map((entry) => (entry.id === draft?.id ? draft : entry)) ?? [];
  const faults =
    layout && body ? (draft ? checkEntries(layout.faces, entries, body, usualRoom) : layout.faults) : [];
  const movable = !readOnly;
  const make = (edits: ReturnType<typeof placeEdits>) => setRefused(refusalOf(store.edit(edits)));
  const take = (entry: Placed) => {
    setTried({ of: box, entry });
    make(placeEdits(box, entry));
  };
  return (
    <section className="box-card" aria-labelledby={`box ${box.box}`}>
      <h3 id={`box ${box.box}`}>
        <button type="button" className="quiet" onClick={() => select(box.box)}>
          <bdi>{box.box}</bdi>
        </button>
        <span className="hint">
          {words.boxes.from[box.from]}
          {box.bought && (
            <>
              {": "}
              <bdi>{box.bought.name}</bdi>
            </>
          )}
        </span>
      </h3>
      {body ? (
        <p>
          {words.boxes.inside}{" "}
          {[body.widthMm, body.heightMm, body.depthMm].map((mm) => caliperWords(mm, shows)).join(" × ")},{" "}
          {words.boxes.wall} {caliperWords(body.wallMm, shows)}, {told.words.material(body.material)}
        </p>
      ) : (
        <>
          <p>{words.boxes.tellInside}</p>
          <TellInside at={box.box} />
        </>
      )}
      {box.unmeasured.length > 0 && (
        <p className="box-note">
          <LevelMark level="unchecked" />
          {words.boxes.unmeasured}: {box.unmeasured.map((what) => words.boxes.measures[what]).join(", ")}
        </p>
      )}
      {box.problems.length > 0 && (
        <p className="box-note">
          <LevelMark level="mend" />
          <span>
            {words.boxes.doesNotDo}:{" "}
            <span lang={told.language}>
              {box.problems.map((one) => boxProblemWords(one, told.words)).join("; ")}
            </span>
          </span>
        </p>
      )}
      {layout && body && (
        <>
          <div className="faces">
            {layout.faces
              .filter(({ name }) => entries.some(({ on }) => on === name))
              .map((face) => (
                <FaceView
                  key={face.name}
                  face={face}
                  body={body}
                  entries={entries.filter(({ on }) => on === face.name)}
                  faults={faults}
                  movable={movable}
                  onTry={(entry) => setTried({ of: box, entry })}
                  onTake={take}
                  onLeave={() => setTried(undefined)}
                />
              ))}
          </div>
          {refused !== undefined && (
            <p className="problem" role="alert">
              {refused}
            </p>
          )}
          <Faults faults={faults} />
          {box.from === "catalogue" && !box.byHand && <p className="hint">{words.boxes.catalogueHint}</p>}
          {box.byHand && !readOnly && (
            <button type="button" className="quiet" onClick={() => make(placeAgainEdits(box))}>
              {words.boxes.placeAgain}
            </button>
          )}
          <Holes entries={entries} />
          {box.drilling.length > 0 && (
            <details>
              <summary>{words.boxes.drilling}</summary>
              <ol lang={told.language}>
                {box.drilling.map((step) => (
                  <li key={drillWords(step)}>{drillWords(step, told.words)}</li>
                ))}
              </ol>
            </details>
          )}
        </>
      )}
    </section>
  );
}

function Faults({ faults }: { faults: readonly EntryFault[] }) {
  const words = useWordsOfBoxes().boxes;
  const shows = useShows();
  const { entry } = useLayoutWords().words;
  if (faults.length === 0) return <p role="status">{words.noFault}</p>;
  return (
    <div role="status">
      <h4>{words.binds}</h4>
      <ul className="short-findings">
        {faults.map((fault) => (
          <li key={`${fault.fault} ${fault.at} ${fault.with ?? ""}`}>
            <LevelMark level="mend" />
            <span>
              <bdi>{entry(fault.at)}</bdi> {words.faults[fault.fault]}
              {fault.with !== undefined && (
                <>
                  {" "}
                  <bdi>{words.with(entry(fault.with))}</bdi>
                </>
              )}
              {fault.figureMm !== undefined &&
                fault.limitMm !== undefined &&
                ` (${words.has(caliperWords(fault.figureMm, shows), caliperWords(fault.limitMm, shows))})`}
              {fault.crackRisk && `; ${words.crack}`}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Holes({ entries }: { entries: readonly Placed[] }) {
  const words = useWordsOfBoxes().boxes;
  const shows = useShows();
  const { entry } = useLayoutWords().words;
  return (
    <details>
      <summary>{words.table}</summary>
      <div className="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.entries}</th>
              <th scope="col">{words.face}</th>
              <th scope="col" className="number">
                {words.hole}
              </th>
              <th scope="col" className="number">
                {words.along}
              </th>
              <th scope="col" className="number">
                {words.up}
              </th>
            </tr>
          </thead>
          <tbody>
            {entries.map(({ id, on, holeMm, x, y }) => (
              <tr key={id}>
                <th scope="row">
                  <bdi>{entry(id)}</bdi>
                </th>
                <td>{words.faces[on]}</td>
                <td className="number">{holeWords(holeMm, shows)}</td>
                <td className="number">{caliperWords(x, shows)}</td>
                <td className="number">{caliperWords(y, shows)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
