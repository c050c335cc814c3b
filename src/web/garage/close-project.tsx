import { useState } from "react";
import { usePlan } from "../app/context.js";
import { useWordsOfBuild } from "../words/build.js";

/** Closes the project in hand under that name; `shelf`: what is on hand is brought up to date with it. */
export type CloseIt = (name: string, shelf: boolean) => Promise<void>;

/** Gives the project in hand a name and closes it: what was built goes into the plan, and the next starts from there. */
export function CloseProject({ finish }: { finish: CloseIt }) {
  const words = useWordsOfBuild().build;
  const [name, setName] = useState("");
  const [shelf, setShelf] = useState(true);
  const hasShelf = usePlan(
    ({ reading }) =>
      reading.ok &&
      [
        reading.plan.stockParts,
        reading.plan.stockWire,
        reading.plan.boughtParts,
        reading.plan.boughtWire,
      ].some((list) => list.length > 0),
  );
  const [missing, setMissing] = useState(false);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        const given = name.trim();
        setMissing(given === "");
        if (given !== "") void finish(given, hasShelf && shelf);
      }}
    >
      <label className="field">
        <span>{words.projectName}</span>
        <input value={name} onChange={(event) => setName(event.target.value)} />
      </label>
      {missing && (
        <p className="problem" role="alert">
          {words.nameMissing}
        </p>
      )}
      {hasShelf && (
        <label className="close-shelf">
          <input type="checkbox" checked={shelf} onChange={(event) => setShelf(event.target.checked)} />
          <span>
            {words.shelfToo} <span className="hint">{words.shelfTooHint}</span>
          </span>
        </label>
      )}
      <button type="submit" className="main">
        {words.finish}
      </button>
    </form>
  );
}
