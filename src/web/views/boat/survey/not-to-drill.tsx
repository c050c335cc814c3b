import { keyText } from "../../../../core/plan/edits/value.js";
import { zoneKinds } from "../../../../core/plan/model/hull.js";
import { usePlan } from "../../../app/context.js";
import { AddThing } from "../../../parts/add-thing.js";
import { useWordsOfFields } from "../../../words/fields.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { InsideList } from "./inside-list.js";

/** What a face's slip shows by fields of their own. */
export const insideFace: readonly string[] = ["zones", "openings", "holes"];

const named = (things: readonly { readonly name: string }[]) =>
  things.map(({ name }) => [name, name] as const);

/** Of a face: where not to drill, through what one reaches its back, and the holes it has. By its slip's name, `faces / side`. */
export function NotToDrill({ at }: { at: string }) {
  const words = useWordsOfSurvey().survey;
  const { yes, no } = useWordsOfFields().fields;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const face = usePlan(({ reading }) =>
    reading.ok
      ? reading.plan.hull.faces.find(({ name }) => at === name || at === `faces / ${name}`)
      : undefined,
  );
  if (face === undefined) return null;
  const { shape, zones, openings, holes, pair } = face;
  const path = `faces / ${face.name}`;
  const below = shape.kind === "strip" ? `below: ${keyText(shape.upper)}, ` : "";
  const kinds = zoneKinds.map((kind) => [kind, words.zoneKinds[kind]] as const);
  const along = { label: words.along, as: "length" } as const;
  const off = { label: words.offEdge, as: "length" } as const;
  const flags = [
    ["true", yes],
    ["false", no],
  ] as const;
  const waters = Object.entries(words.waters);
  return (
    <>
      <section>
        <h3>{words.zones(zones.length)}</h3>
        <p className="hint">{words.zonesHint}</p>
        <InsideList
          at={path}
          section="zones"
          names={named(zones)}
          keys={[
            { key: "from", label: words.from, as: "length" },
            { key: "to", label: words.to, as: "length" },
            { key: "kind", label: words.zoneIs, as: kinds },
            { key: "off", label: words.offFromTo, as: "lengths" },
          ]}
        />
        {!readOnly && (
          <AddThing
            title={words.addZone}
            asks={[
              { key: "name", label: words.name, as: "name" },
              { key: "kind", label: words.zoneIs, as: kinds },
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
        )}
      </section>
      <section>
        <h3>{words.openings(openings.length)}</h3>
        <p className="hint">{words.openingsHint}</p>
        <InsideList
          at={path}
          section="openings"
          names={named(openings)}
          keys={[
            { key: "at / along", ...along },
            { key: "at / off", ...off },
            { key: "clear", label: words.clear, as: "length" },
            { key: "reach", label: words.reach, as: "length" },
          ]}
        />
        {!readOnly && (
          <AddThing
            title={words.addOpening}
            asks={[
              { key: "name", label: words.name, as: "name" },
              { key: "along", ...along },
              { key: "off", ...off },
              { key: "clear", label: words.clear, as: "length" },
              { key: "reach", label: words.reach, as: "length" },
            ]}
            edits={({ name = "", along: so, off: far, clear, reach }) => [
              {
                edit: "set field",
                at: path,
                field: `openings / ${name}`,
                to: `{at: {along: ${so}, ${below}off: ${far}}, clear: ${clear}, reach: ${reach}}`,
              },
            ]}
          />
        )}
      </section>
      <section>
        <h3>{words.holes(holes.length)}</h3>
        <p className="hint">{words.holesHint}</p>
        <InsideList
          at={path}
          section="holes"
          names={named(holes)}
          keys={[
            { key: "at / along", ...along },
            { key: "at / off", ...off },
            { key: "hole / size", label: words.across, as: "length" },
            { key: "hole / water", label: words.water, as: waters },
            { key: "there", label: words.isThere, as: flags },
            ...(pair ? [{ key: "pair", label: words.onBoth, as: flags }] : []),
          ]}
        />
        {!readOnly && (
          <AddThing
            title={words.addHole}
            asks={[
              { key: "name", label: words.name, as: "name" },
              { key: "along", ...along },
              { key: "off", ...off },
              { key: "size", label: words.across, as: "length" },
              { key: "water", label: words.water, as: waters },
              { key: "there", label: words.isThere, as: flags },
              ...(pair ? [{ key: "pair", label: words.onBoth, as: flags } as const] : []),
            ]}
            edits={({ name = "", along: so, off: far, size, water, there, pair: both }) => [
              {
                edit: "set field",
                at: path,
                field: `holes / ${name}`,
                to: `{at: {along: ${so}, ${below}off: ${far}}, hole: {size: ${size}, water: ${water}}, there: ${there}${both === undefined ? "" : `, pair: ${both}`}}`,
              },
            ]}
          />
        )}
      </section>
    </>
  );
}
