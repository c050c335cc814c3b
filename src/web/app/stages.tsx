import { useEffect, useRef } from "react";
import { ViewLink } from "../parts/view-link.js";
import { useWords } from "./context.js";
import { stageIds, type ViewId } from "./view-ids.js";

/** The stages of the job as stations along a base line; one is always where one is. */
export function Stages({ view }: { view: ViewId }) {
  const { shell, views } = useWords();
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    list.current
      ?.querySelector(`[data-stage="${view}"]`)
      ?.scrollIntoView({ block: "nearest", inline: "center" });
  }, [view]);
  return (
    <nav className="stages" aria-label={shell.stages}>
      <ol ref={list}>
        {stageIds.map((stage) => (
          <li key={stage} data-stage={stage}>
            <ViewLink view={stage} current={stage === view} title={views.purpose[stage]}>
              {views.names[stage]}
            </ViewLink>
          </li>
        ))}
      </ol>
    </nav>
  );
}
