import { useId, useState } from "react";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import { usePlan, usePlanStore, useShows } from "../../../app/context.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { useProblemWords } from "../../../parts/use-problem-words.js";
import { useRefusal } from "../../../parts/use-refusal.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import { broughtAboard, freeAmidships } from "../model/arrange.js";
import { lengthText, pointText } from "../model/length-text.js";
import { placeEdits } from "../model/place-edits.js";
import type { BoatScene } from "../model/scene.js";
import { standFree, standOn } from "../model/stand-edits.js";
import type { BoatThing } from "../model/things.js";
import { useScene } from "../use-scene.js";
import { FaceFields } from "./face-fields.js";

const axes = ["forward", "port", "up"] as const;

/** Where a thing is in the boat, in figures, to read and to type over. Nothing for what has no place, as a run. */
export function PlaceFields({ name }: { name: string }) {
  const scene = useScene();
  const words = useWordsOfBoat().boat;
  const thing = scene?.byName.get(name) ?? scene?.things.find(({ group }) => group === name);
  if (!scene || !thing) return null;
  return (
    <section className="place-fields">
      <h3>{words.placeFields}</h3>
      <StandsField scene={scene} thing={thing} />
      {thing.face ? <FaceFields scene={scene} thing={thing} /> : <FreeFields scene={scene} thing={thing} />}
    </section>
  );
}

/** Whether gear stands free in the boat or on one of the faces that are drilled. */
function StandsField({ scene, thing }: { scene: BoatScene; thing: BoatThing }) {
  const words = useWordsOfBoat().boat;
  const shows = useShows();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const id = useId();
  const [refused, setRefused] = useState<string>();
  const entry = scene.plan.source.gear.find(({ name }) => name === thing.group);
  const faces = scene.hull.faces.filter(({ sides }) => sides.length > 0);
  if (!entry || faces.length === 0) return null;
  const { placing } = entry;
  const stand = (on: string) => {
    const face = faces.find(({ name }) => name === on);
    const edits = [...standFree(entry), ...(face ? standOn(entry, face, shows) : [])];
    setRefused(refusalOf(store.edit(edits)));
  };
  return (
    <div className="field">
      <label htmlFor={id}>{words.stands}</label>
      <select
        id={id}
        value={placing?.on ?? ""}
        disabled={readOnly}
        onChange={({ target }) => stand(target.value)}
      >
        <option value="">{words.free}</option>
        {faces.map(({ name }) => (
          <option key={name} value={name}>
            {words.onFace(name)}
          </option>
        ))}
      </select>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </div>
  );
}

function Unplaced({ scene, thing, readOnly }: { scene: BoatScene; thing: BoatThing; readOnly: boolean }) {
  const words = useWordsOfBoat().boat;
  const shows = useShows();
  const store = usePlanStore();
  const place = () => {
    const pieces = scene.things.filter(({ group }) => group === thing.group);
    const moves = broughtAboard(scene, pieces, [freeAmidships(scene), 0, 0], false);
    store.edit(placeEdits(scene, moves, shows));
  };
  return (
    <p className="row">
      <span className="hint">{words.notPlaced}.</span>
      {!readOnly && (
        <button type="button" onClick={place}>
          {words.placeFree}
        </button>
      )}
    </p>
  );
}

function FreeFields({ scene, thing }: { scene: BoatScene; thing: BoatThing }) {
  const words = useWordsOfBoat().boat;
  const shows = useShows();
  const store = usePlanStore();
  const problems = useProblemWords().words;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const { at } = thing;
  if (!at) return <Unplaced scene={scene} thing={thing} readOnly={readOnly} />;
  const field = fieldOf(thing);
  const take =
    (axis: number) =>
    (typed: string): string | undefined => {
      const parts = at.map((value, i) => (i === axis ? typed : lengthText(value, shows)));
      const many = thing.count > 1 && !field.includes(" / ");
      // one place for all pieces: the one that is changed gets a place of its own, and so do the others
      const all = Array.from({ length: thing.count }, (_, i) =>
        i === thing.index ? `[${parts.join(", ")}]` : pointText(at, shows),
      );
      const to = many ? `[${all.join(", ")}]` : `[${parts.join(", ")}]`;
      const edit: Edit = { edit: "set field", at: thing.group, field, to };
      const made = store.edit([edit]);
      if (made.ok) return undefined;
      return "problem" in made ? problems.edit(made.problem) : words.readOnlyPlan;
    };
  return (
    <div className="place-axes">
      {axes.map((axis, i) => (
        <QuantityField
          key={axis}
          label={words.axis[axis]}
          kind="length"
          value={lengthText(at[i] ?? 0, shows)}
          disabled={readOnly}
          onTake={take(i)}
        />
      ))}
    </div>
  );

  function fieldOf({ kind, count, group, index }: BoatThing): string {
    if (kind === "waypoint") return "at";
    if (count === 1) return "stands at";
    const { reading } = store.get();
    const written = reading.ok ? reading.plan.gear.find((one) => one.name === group)?.standsAtM?.length : 0;
    return written === count ? `stands at / ${index + 1}` : "stands at";
  }
}
