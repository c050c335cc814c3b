import { useState } from "react";
import { useWordsOfBuild } from "../words/build.js";

/** Gives the project in hand a name and closes it: what was built goes into the plan, and the next starts from there. */
export function CloseProject({ finish }: { finish: (name: string) => Promise<void> }) {
  const words = useWordsOfBuild().build;
  const [name, setName] = useState("");
  const [missing, setMissing] = useState(false);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        const given = name.trim();
        setMissing(given === "");
        if (given !== "") void finish(given);
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
      <button type="submit" className="main">
        {words.finish}
      </button>
    </form>
  );
}
