import { type Ref, useState } from "react";
import { useWords } from "../../app/context.js";
import { ViewLink } from "../../parts/view-link.js";

/** All steps are done: the project gets a name, and the next starts from what was built. */
export function Finish(props: {
  heading: Ref<HTMLHeadingElement>;
  finish: (name: string) => Promise<void>;
  any: boolean;
  readOnly: boolean;
}) {
  const words = useWords().build;
  const [name, setName] = useState("");
  const [missing, setMissing] = useState(false);
  return (
    <article className="step-sheet">
      <h3 ref={props.heading} tabIndex={-1}>
        {props.any ? words.allDone : words.nothingToDo}
      </h3>
      {props.any ? (
        <ul className="step-next">
          <li>
            <ViewLink view="proof">{words.toRecheck}</ViewLink>
          </li>
          <li>
            <ViewLink view="print">{words.toSheet}</ViewLink>
          </li>
          {!props.readOnly && <li>{words.allDoneHint}</li>}
        </ul>
      ) : (
        <p>{words.nothingHint}</p>
      )}
      {props.any && !props.readOnly && (
        <form
          className="stack"
          onSubmit={(event) => {
            event.preventDefault();
            const given = name.trim();
            setMissing(given === "");
            if (given !== "") void props.finish(given);
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
      )}
    </article>
  );
}
