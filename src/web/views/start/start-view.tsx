import { useState } from "react";
import { useWords } from "../../app/context.js";
import { goTo } from "../../app/place.js";
import { useTitle } from "../../app/use-title.js";
import { Icon } from "../../parts/icon.js";
import { Mark } from "../../parts/mark.js";
import { PlaceLink } from "../../parts/place-link.js";
import type { StepAbout } from "../../state/keep/records.js";
import { BoatPicture } from "./boat-picture.js";
import { type ExampleId, exampleIds, exampleText } from "./examples.js";
import { KeptPlans } from "./kept-plans.js";
import { OpenFile } from "./open-file.js";
import { StartSettings } from "./start-settings.js";

/** Examples, a new plan, a file, and the plans kept here. */
export function StartView() {
  const words = useWords();
  useTitle(words.start.title);
  const [busy, setBusy] = useState(false);
  const openExample = async (id: ExampleId) => {
    setBusy(true);
    const text = await exampleText(id);
    const { takeIn } = await import("../../state/take-in.js");
    const about: StepAbout = { did: "made", from: "example", name: id };
    const made = await takeIn(text, about, id);
    goTo({ at: "plan", plan: made.id, view: "layout" });
  };
  return (
    <div className="start">
      <header className="start-head">
        <p className="start-name">
          <Mark sizePx={38} /> {words.shell.name}
        </p>
        <StartSettings />
      </header>
      <main aria-busy={busy}>
        <BoatPicture />
        <h1>{words.start.title}</h1>
        <p className="lead">{words.start.lead}</p>
        <div className="start-ways">
          <PlaceLink to={{ at: "new" }} className="card main-card">
            <span>
              <b>{words.start.newPlan}</b>
              <span className="hint">{words.start.newPlanHint}</span>
            </span>
            <Icon name="add" />
          </PlaceLink>
          <OpenFile />
        </div>
        <KeptPlans />
        <section aria-labelledby="examples">
          <h2 id="examples">{words.start.examples}</h2>
          <p className="hint">{words.start.examplesHint}</p>
          <ul className="cards">
            {exampleIds.map((id) => (
              <li key={id}>
                <button type="button" className="card" data-example={id} onClick={() => void openExample(id)}>
                  <span>{words.start.exampleKinds[id]}</span>
                  <Icon name="arrow" />
                </button>
              </li>
            ))}
          </ul>
        </section>
      </main>
      <footer className="foot">{words.shell.planningAid}</footer>
    </div>
  );
}
