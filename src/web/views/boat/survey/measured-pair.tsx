import { keyText } from "../../../../core/plan/edits/value.js";
import { usePlan } from "../../../app/context.js";
import { AddThing } from "../../../parts/add-thing.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { InsideList } from "./inside-list.js";

/** Of a pair of reference points: how far each is from a common one, which tells by how much her two sides differ. */
export function MeasuredPair({ at }: { at: string }) {
  const words = useWordsOfSurvey().survey;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const points = usePlan(({ reading }) => (reading.ok ? reading.plan.hull.references : undefined));
  const point = points?.find(({ name }) => at === name || at === `references / ${name}`);
  if (!points || !point || !(point.pair || point.measured.length > 0)) return null;
  const path = `references / ${point.name}`;
  const { measured } = point;
  // both are measured to one point in the middle of the boat, or to anything else they share
  const others = points.filter(({ name }) => name !== point.name).map(({ name }) => [name, name] as const);
  return (
    <section>
      <h3>{words.bothSides}</h3>
      <p className="hint">{words.bothSidesHint}</p>
      <InsideList
        at={path}
        section="measured"
        names={measured.map(({ from }, index) => [String(index + 1), words.fromPoint(from)] as const)}
        keys={[
          { key: "port", label: words.toPort, as: "length" },
          { key: "starboard", label: words.toStarboard, as: "length" },
        ]}
      />
      {!readOnly && others.length > 0 && (
        <AddThing
          title={words.addBoth}
          asks={[
            { key: "from", label: words.commonPoint, as: others },
            { key: "port", label: words.toPort, as: "length" },
            { key: "starboard", label: words.toStarboard, as: "length" },
          ]}
          edits={({ from = "", port, starboard }) => {
            const one = `{from: ${keyText(from)}, port: ${port}, starboard: ${starboard}}`;
            return [
              measured.length === 0
                ? { edit: "set field", at: path, field: "measured", to: `[${one}]` }
                : { edit: "set field", at: path, field: `measured / ${measured.length + 1}`, to: one },
            ];
          }}
        />
      )}
    </section>
  );
}
