import { useMemo, useState } from "react";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { ChangePreview } from "../../parts/change-preview.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfRemedies } from "../../words/remedies.js";

/** What one can do about a finding: each remedy shows what it changes before it is made. */
export function Remedies({ edits }: { edits: readonly Edit[] }) {
  const words = useWordsOfRemedies().findings;
  if (edits.length === 0) return null;
  return (
    <section>
      <h3>{edits.length === 1 ? words.remedy : words.remedies}</h3>
      <ul className="remedies">
        {edits.map((edit) => (
          <Remedy key={JSON.stringify(edit)} edit={edit} />
        ))}
      </ul>
    </section>
  );
}

function Remedy({ edit }: { edit: Edit }) {
  const words = useWordsOfRemedies();
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [previewed, setPreviewed] = useState(false);
  const [refused, setRefused] = useState<string>();
  const edits = useMemo(() => [edit], [edit]);
  const apply = () => setRefused(refusalOf(store.edit(edits)));
  return (
    <li>
      <p>
        <bdi>{words.edits.sentence(edit)}</bdi>
      </p>
      <p className="row">
        <button type="button" aria-expanded={previewed} onClick={() => setPreviewed(!previewed)}>
          {words.findings.preview}
        </button>
        {previewed && !readOnly && (
          <button type="button" className="main" onClick={apply}>
            {words.findings.apply}
          </button>
        )}
      </p>
      {previewed && <ChangePreview edits={edits} />}
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </li>
  );
}
