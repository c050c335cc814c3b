import { useMemo } from "react";
import { Locator } from "../../../core/plan/edits/locate.js";
import { thingKeys } from "../../../core/plan/schema/thing-keys.js";
import type { TermId } from "../../../words/screen/en/terms.js";
import { useOfFigures, usePlan } from "../../app/context.js";
import { Assumptions } from "../../parts/assumptions.js";
import { Slip } from "../../parts/slip.js";
import { Term } from "../../parts/term.js";
import { useWordsOfSlip } from "../../words/slip.js";
import { MeasuredPair } from "../boat/survey/measured-pair.js";
import { insideFace, NotToDrill } from "../boat/survey/not-to-drill.js";
import { PlaceFields } from "../boat/tools/place-fields.js";
import { ThingFields } from "./thing-fields.js";
import { ThingFigures } from "./thing-figures.js";
import { ThingFindings } from "./thing-findings.js";
import { ThingName } from "./thing-name.js";

/** The slip of a thing of the plan, by its name: figures, findings, what is written about it, what was assumed. */
export default function ThingSlip({ name, close }: { name: string; close: () => void }) {
  const words = useWordsOfSlip();
  const reading = usePlan((state) => state.reading);
  const found = useMemo(() => {
    if (!reading.ok) return undefined;
    const locator = new Locator(reading.document);
    const location = locator.find(name);
    return location && { ...location, node: locator.node(location.path) };
  }, [reading, name]);
  if (!found)
    return (
      <Slip title={name} close={close}>
        <p>{words.shell.nothingThere}</p>
      </Slip>
    );
  const written = String(found.path.at(-1) ?? name);
  const names = found.kind === "way" ? [name] : [...new Set([name, written])];
  return (
    <Slip title={sections.has(found.kind) ? written : name} kind={<Kind of={found.kind} />} close={close}>
      <div className="working">
        <ThingFigures name={name} kind={found.kind} />
        <ThingFindings names={names} />
        <PlaceFields name={name} />
        {found.kind === "face" && <NotToDrill at={name} />}
        {found.kind === "reference" && <MeasuredPair at={name} />}
        <ThingFields
          at={name}
          keys={thingKeys(found.kind)}
          node={found.node}
          without={shownApart[found.kind]}
        />
        <Assumed names={names} />
        {found.kind !== "plan" && found.path.length > 1 && (
          <ThingName at={name} written={written} close={close} />
        )}
      </div>
    </Slip>
  );
}

function Assumed({ names }: { names: readonly string[] }) {
  const words = useWordsOfSlip().slip;
  const assumed = useOfFigures((figures) =>
    (figures?.assumptions ?? []).filter(({ at }) => names.includes(at)),
  );
  return <Assumptions of={assumed} title={words.assumed} />;
}

/** Kinds whose names are found by the section they stand in, since places may be called so too: the title leaves it out. */
const sections: ReadonlySet<string> = new Set(["face", "reference", "outing", "corner"]);

/** Keys that have fields of their own above. */
const shownApart: Readonly<Record<string, readonly string[]>> = { face: insideFace, reference: ["measured"] };

const terms: Readonly<Record<string, TermId>> = {
  way: "way",
  run: "run",
  outing: "outing",
  corner: "corner",
};

/** What kind of thing it is, and what that means. */
function Kind({ of }: { of: string }) {
  const kinds: Readonly<Record<string, string>> = useWordsOfSlip().slip.kinds;
  const term = terms[of];
  return (
    <>
      {Object.hasOwn(kinds, of) ? kinds[of] : of}
      {term && <Term of={term} />}
    </>
  );
}
