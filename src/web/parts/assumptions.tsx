import { useState } from "react";
import type { Assumption } from "../../core/plan/completed.js";
import { usePlan, usePlanStore } from "../app/context.js";
import { useWordsOfWorking } from "../words/working.js";
import { useAssumptionWords } from "./use-assumption-words.js";
import { useRefusal } from "./use-refusal.js";

/** What was taken where the plan says nothing, and why; each can be written into the plan, to be kept or changed. */
export function Assumptions({ of, title }: { of: readonly Assumption[]; title: string }) {
  if (of.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul className="assumptions">
        {of.map((assumption) => (
          <OneAssumption key={`${assumption.at} ${assumption.field}`} {...assumption} />
        ))}
      </ul>
    </section>
  );
}

function OneAssumption({ at, field, value, reason }: Assumption) {
  const words = useWordsOfWorking();
  const why = useAssumptionWords();
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [refused, setRefused] = useState<string>();
  const write = () => {
    const answer = store.edit([{ edit: "set field", at, field, to: value }]);
    setRefused(refusalOf(answer));
  };
  return (
    <li>
      <span>
        <bdi>{at}</bdi>, {why.words.field(field)}: <b>{why.words.value(value)}</b>
      </span>
      <span className="hint" lang={why.language}>
        {why.words.reasons[reason]}
      </span>
      {!readOnly && (
        <button
          type="button"
          className="quiet"
          aria-label={`${words.working.writeDown}: ${at}, ${why.words.field(field)}`}
          onClick={write}
        >
          {words.working.writeDown}
        </button>
      )}
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </li>
  );
}
