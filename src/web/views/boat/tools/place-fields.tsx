import type { Edit } from "../../../../core/plan/edits/edit.js";
import { usePlan, usePlanStore, useShows, useWords } from "../../../app/context.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { useProblemWords } from "../../../parts/use-problem-words.js";
import { lengthText, pointText } from "../model/length-text.js";
import type { BoatThing } from "../model/things.js";
import { useScene } from "../use-scene.js";
import { FaceFields } from "./face-fields.js";

const axes = ["forward", "port", "up"] as const;

/** Where a thing is in the boat, in figures, to read and to type over. Nothing for what has no place, as a run. */
export function PlaceFields({ name }: { name: string }) {
  const scene = useScene();
  const words = useWords().boat;
  const thing = scene?.byName.get(name) ?? scene?.things.find(({ group }) => group === name);
  if (!scene || !thing) return null;
  return (
    <section className="place-fields">
      <h3>{words.placeFields}</h3>
      {thing.face ? <FaceFields scene={scene} thing={thing} /> : <FreeFields thing={thing} />}
    </section>
  );
}

function FreeFields({ thing }: { thing: BoatThing }) {
  const words = useWords().boat;
  const shows = useShows();
  const store = usePlanStore();
  const problems = useProblemWords().words;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const { at } = thing;
  if (!at) return <p className="hint">{words.notPlaced}</p>;
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
