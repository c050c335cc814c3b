import { useEffect, useState } from "react";
import { useWords } from "../../app/context.js";
import { StorageAnswer } from "../../app/storage-answer.js";
import { Icon } from "../../parts/icon.js";
import { PlaceLink } from "../../parts/place-link.js";
import { whenWords } from "../../parts/when-words.js";
import type { PlanRecord } from "../../state/keep/records.js";

type Found =
  | { readonly is: "looking" }
  | { readonly is: "plans"; readonly plans: readonly PlanRecord[] }
  | { readonly is: "closed"; readonly newer: boolean };

/** The plans this browser keeps. */
export function KeptPlans() {
  const words = useWords();
  const [found, setFound] = useState<Found>({ is: "looking" });
  const [asking, setAsking] = useState<string>();
  useEffect(() => watchPlans(setFound), []);
  return (
    <section aria-labelledby="kept">
      <h2 id="kept">{words.start.kept}</h2>
      {found.is === "looking" && <p className="hint">{words.start.loadingPlans}</p>}
      {found.is === "closed" && (
        <p className="notice">{found.newer ? words.keeping.newerDatabase : words.start.noDatabase}</p>
      )}
      {found.is === "plans" && found.plans.length === 0 && <p className="hint">{words.start.noneKept}</p>}
      {found.is === "plans" && (
        <ul className="cards">
          {found.plans.map((plan) => (
            <li key={plan.id} className="kept-plan">
              <PlanLink plan={plan} />
              <button
                type="button"
                className="icon-button"
                aria-label={`${words.start.remove}: ${plan.name}`}
                onClick={() => setAsking(plan.id)}
              >
                <Icon name="close" />
              </button>
              {plan.begun === true && (
                <PlaceLink
                  className="next-project"
                  label={`${words.start.nextProject}: ${plan.name}`}
                  to={{ at: "plan", plan: plan.id, view: "log" }}
                >
                  {words.start.nextProject}
                </PlaceLink>
              )}
              {asking === plan.id && <AskRemove plan={plan} done={() => setAsking(undefined)} />}
            </li>
          ))}
        </ul>
      )}
      {found.is === "plans" && found.plans.some(({ saved }) => !saved) && (
        <p className="hint">
          {words.keeping.onlyHereHint} <StorageAnswer />
        </p>
      )}
    </section>
  );
}

function PlanLink({ plan }: { plan: PlanRecord }) {
  const words = useWords();
  return (
    <PlaceLink className="card" to={{ at: "plan", plan: plan.id, view: "layout" }}>
      <span>
        <b>
          <bdi>{plan.name}</bdi>
        </b>
        <span className="hint">
          {words.start.changed(whenWords(plan.changedAt))}
          {plan.saved ? "" : ` · ${words.keeping.onlyHere}`}
        </span>
      </span>
    </PlaceLink>
  );
}

function AskRemove({ plan, done }: { plan: PlanRecord; done: () => void }) {
  const words = useWords();
  const remove = async () => {
    const { takeOffShelf } = await import("../../state/shelf.js");
    await takeOffShelf(plan.id);
    done();
  };
  return (
    <div className="ask" role="alertdialog" aria-label={words.start.removeAsk(plan.name)}>
      <p>{words.start.removeAsk(plan.name)}</p>
      <p className="hint">
        {plan.saved ? "" : `${words.start.removeOnlyCopy} `}
        {words.start.removeWarn}
      </p>
      <p className="row">
        <button type="button" onClick={() => void remove()}>
          {words.start.remove}
        </button>
        <button type="button" className="quiet" ref={(button) => button?.focus()} onClick={done}>
          {words.shell.cancel}
        </button>
      </p>
    </div>
  );
}

/** Reads the shelf now and after each change in any tab. @returns how to stop. */
function watchPlans(found: (found: Found) => void): () => void {
  let stop = () => {};
  let wanted = true;
  const start = async () => {
    const [{ shelf, tabs }, { listPlans }] = await Promise.all([
      import("../../state/shelf.js"),
      import("../../state/keep/plans.js"),
    ]);
    const look = async () => {
      const state = await shelf();
      if (!wanted) return;
      if (state.is === "open") found({ is: "plans", plans: await listPlans(state.database) });
      else found({ is: "closed", newer: state.reason !== "refused" });
    };
    const stopListening = tabs.listen(() => void look());
    addEventListener("skiffloom-shelf", look);
    stop = () => {
      stopListening();
      removeEventListener("skiffloom-shelf", look);
    };
    await look();
  };
  void start();
  return () => {
    wanted = false;
    stop();
  };
}
