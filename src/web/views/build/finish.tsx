import type { Ref } from "react";
import { type CloseIt, CloseProject } from "../../garage/close-project.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfBuild } from "../../words/build.js";

/** All steps are done: the project gets a name, and the next starts from what was built. */
export function Finish(props: {
  heading: Ref<HTMLHeadingElement>;
  finish: CloseIt;
  any: boolean;
  readOnly: boolean;
}) {
  const words = useWordsOfBuild().build;
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
      {props.any && !props.readOnly && <CloseProject finish={props.finish} />}
    </article>
  );
}
