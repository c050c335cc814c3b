import type { ReactNode } from "react";
import { keyText } from "../../../../core/plan/edits/value.js";
import { looks } from "../../../../core/plan/model/hull.js";
import { usePlan, useShows } from "../../../app/context.js";
import { useSelection } from "../../../app/place.js";
import { AddThing, type Asking } from "../../../parts/add-thing.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { lengthText, pointText } from "../model/length-text.js";
import type { BoatScene } from "../model/scene.js";
import { Afloat } from "./afloat.js";

/** What one drills, what one measures from, and where cables pass: each list with a way to add to it. */
export function PlacesToMark({ scene }: { scene: BoatScene }) {
  const words = useWordsOfSurvey().survey;
  const shows = useShows();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const { source } = scene.plan;
  const form = scene.hull.form?.form;
  const lines = form?.lines.map(({ name }) => name) ?? [];
  const share = (of: number) => (form ? lengthText(form.fromM + of * (form.toM - form.fromM), shows) : "");
  const nought = lengthText(0, shows);
  const both = {
    key: "pair",
    label: words.sides,
    as: [
      ["true", words.both],
      ["false", words.one],
    ],
  } as const;
  const name: Asking = { key: "name", label: words.name, as: "name" };
  const ends = [
    ...new Set([...scene.things.map(({ group }) => group), ...source.waypoints.map((one) => one.name)]),
  ];
  return (
    <div className="places-to-mark">
      <Afloat scene={scene} />
      <Group
        title={words.faces}
        hint={words.facesHint}
        names={source.hull.faces.map((face) => face.name)}
        at="faces"
      >
        {!readOnly && lines.length > 1 && (
          <AddThing
            title={words.addFace}
            asks={[
              { ...name, start: source.hull.faces.length === 0 ? words.sideName : "" },
              { key: "strip", label: words.between, as: strips(lines) },
              { key: "from", label: words.from, as: "length", start: share(0.15) },
              { key: "to", label: words.to, as: "length", start: share(0.8) },
              both,
            ]}
            edits={({ name: called = "", strip = "", from, to, pair }) => [
              {
                edit: "add",
                kind: "face",
                name: called,
                as: `{strip: ${strip}, from: ${from}, to: ${to}, pair: ${pair}}`,
              },
            ]}
          />
        )}
        {lines.length < 2 && <p className="hint">{words.formFirst}</p>}
        {!readOnly && (
          <details>
            <summary>{words.flatFace}</summary>
            <p className="hint">{words.flatHint}</p>
            <AddThing
              title={words.addFlat}
              asks={[
                name,
                { key: "width", label: words.width, as: "length" },
                { key: "height", label: words.height, as: "length" },
                { key: "looks", label: words.looks, as: looks.map((way) => [way, words.ways[way]] as const) },
                { key: "forward", label: words.cornerAt, as: "length" },
                { key: "port", label: words.cornerPort, as: "length" },
                { key: "up", label: words.cornerUp, as: "length" },
              ]}
              edits={({ name: called = "", width, height, looks: way, forward, port, up }) => [
                {
                  edit: "add",
                  kind: "face",
                  name: called,
                  as: `{flat: [${[
                    [nought, nought],
                    [width, nought],
                    [width, height],
                    [nought, height],
                  ]
                    .map((corner) => `[${corner.join(", ")}]`)
                    .join(", ")}], at: [${forward}, ${port}, ${up}], looks: ${way}}`,
                },
              ]}
            />
          </details>
        )}
      </Group>
      <Group
        title={words.points}
        hint={words.pointsHint}
        names={source.hull.references.map((point) => point.name)}
        at="references"
      >
        {!readOnly && lines.length > 1 && (
          <AddThing
            title={words.addPoint}
            asks={[
              name,
              {
                key: "on",
                label: words.onLine,
                as: [...lines].reverse().map((line) => [line, line] as const),
              },
              { key: "station", label: words.station, as: "length" },
              both,
            ]}
            edits={({ name: called = "", on = "", station, pair }) => [
              {
                edit: "add",
                kind: "reference",
                name: called,
                as: `{on: ${keyText(on)}, station: ${station}, pair: ${pair}}`,
              },
            ]}
          />
        )}
        {!readOnly && source.hull.faces.length > 0 && (
          <details>
            <summary>{words.pointOnFace}</summary>
            <AddThing
              title={words.addOnFace}
              asks={[
                name,
                {
                  key: "face",
                  label: words.onFace,
                  as: source.hull.faces.map((face) => [face.name, face.name] as const),
                },
                { key: "along", label: words.along, as: "length" },
                { key: "off", label: words.offEdge, as: "length" },
                both,
              ]}
              edits={({ name: called = "", face = "", along, off, pair }) => [
                {
                  edit: "add",
                  kind: "reference",
                  name: called,
                  as: `{face: ${keyText(face)}, along: ${along}, off: ${off}, pair: ${pair}}`,
                },
              ]}
            />
          </details>
        )}
      </Group>
      <Group title={words.passes} hint={words.passesHint} names={source.waypoints.map((one) => one.name)}>
        {!readOnly && (
          <AddThing
            title={words.addPass}
            asks={[name]}
            edits={({ name: called = "" }) => [
              {
                edit: "add",
                kind: "waypoint",
                name: called,
                as: `{at: ${pointText(middleOf(scene), shows)}}`,
              },
            ]}
          />
        )}
        <Group title={words.legs} hint={words.legsHint} names={source.legs.map((leg) => leg.name)}>
          {!readOnly && source.waypoints.length > 0 && (
            <AddThing
              title={words.addLeg}
              asks={[
                name,
                { key: "from", label: words.legFrom, as: ends.map((end) => [end, end] as const) },
                {
                  key: "to",
                  label: words.legTo,
                  as: source.waypoints.map((one) => [one.name, one.name] as const),
                },
              ]}
              edits={({ name: called = "", from = "", to = "" }) => [
                {
                  edit: "add",
                  kind: "leg",
                  name: called,
                  as: `{from: ${keyText(from)}, to: ${keyText(to)}}`,
                },
              ]}
            />
          )}
        </Group>
      </Group>
    </div>
  );
}

/** Neighbouring lines, the highest strip first: `[chine, sheer]`. */
const strips = (lines: readonly string[]): (readonly [string, string])[] =>
  lines
    .slice(1)
    .map((upper, i) => [lines[i] ?? upper, upper] as const)
    .map(([lower, upper]) => [`[${keyText(lower)}, ${keyText(upper)}]`, `${lower} – ${upper}`] as const)
    .reverse();

/** Amidships under the sheer, from where it is dragged to its place. */
function middleOf({ drawn: { form } }: BoatScene): readonly [number, number, number] {
  const top = form.lines.at(-1)?.points ?? [];
  const middle = top[Math.floor(top.length / 2)];
  return middle ? [middle[0], middle[1] * 0.9, middle[2] * 0.8] : [0, 0, 0];
}

function Group(props: {
  title: string;
  hint: string;
  names: readonly string[];
  /** Section to name in front of them, where their names may be those of places too. */
  at?: string;
  children: ReactNode;
}) {
  const [selected, select] = useSelection();
  const pathOf = (name: string) => (props.at === undefined ? name : `${props.at} / ${name}`);
  return (
    <section>
      <h3>{props.title}</h3>
      <p className="hint">{props.hint}</p>
      {props.names.length > 0 && (
        <p className="row">
          {props.names.map((name) => (
            <button
              key={name}
              type="button"
              aria-pressed={selected === pathOf(name)}
              onClick={() => select(pathOf(name))}
            >
              <bdi>{name}</bdi>
            </button>
          ))}
        </p>
      )}
      {props.children}
    </section>
  );
}
