import { keyText } from "../../../../core/plan/edits/value.js";
import { zoneKinds } from "../../../../core/plan/model/hull.js";
import { usePlan } from "../../../app/context.js";
import { AddThing } from "../../../parts/add-thing.js";
import { useWordsOfSurvey } from "../../../words/survey.js";

/** Of a face: where not to drill, and through what one reaches its back. By its slip's name, `faces / side`. */
export function NotToDrill({ at }: { at: string }) {
  const words = useWordsOfSurvey().survey;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const face = usePlan(({ reading }) =>
    reading.ok
      ? reading.plan.hull.faces.find(({ name }) => at === name || at === `faces / ${name}`)
      : undefined,
  );
  if (readOnly || face === undefined) return null;
  const { shape, zones, openings } = face;
  const path = `faces / ${face.name}`;
  const below = shape.kind === "strip" ? `below: ${keyText(shape.upper)}, ` : "";
  return (
    <>
      <section>
        <h3>{words.zones(zones.length)}</h3>
        <p className="hint">{words.zonesHint}</p>
        <AddThing
          title={words.addZone}
          asks={[
            { key: "name", label: words.name, as: "name" },
            { key: "kind", label: words.zoneIs, as: zoneKinds.map((kind) => [kind, words.zoneKinds[kind]]) },
            { key: "from", label: words.from, as: "length" },
            { key: "to", label: words.to, as: "length" },
          ]}
          edits={({ name = "", kind = "other", from, to }) => [
            {
              edit: "set field",
              at: path,
              field: `zones / ${name}`,
              to: `{kind: ${kind}, from: ${from}, to: ${to}}`,
            },
          ]}
        />
      </section>
      <section>
        <h3>{words.openings(openings.length)}</h3>
        <p className="hint">{words.openingsHint}</p>
        <AddThing
          title={words.addOpening}
          asks={[
            { key: "name", label: words.name, as: "name" },
            { key: "along", label: words.along, as: "length" },
            { key: "off", label: words.offEdge, as: "length" },
            { key: "clear", label: words.clear, as: "length" },
            { key: "reach", label: words.reach, as: "length" },
          ]}
          edits={({ name = "", along, off, clear, reach }) => [
            {
              edit: "set field",
              at: path,
              field: `openings / ${name}`,
              to: `{at: {along: ${along}, ${below}off: ${off}}, clear: ${clear}, reach: ${reach}}`,
            },
          ]}
        />
      </section>
    </>
  );
}
