import { usePlan, useShows } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import { ViewLink } from "../../parts/view-link.js";
import { useLayout } from "../../print/use-layout.js";
import { useWordsOfBoxes } from "../../words/boxes.js";
import { BoxCard } from "./box-card.js";
import { MoreBoxes } from "./tell-inside.js";

/** Boxes and cased panels: their faces at scale with holes, clearances, and what binds. */
export function View() {
  const words = useWordsOfBoxes();
  const { lengths } = useShows();
  const sound = usePlan(({ reading }) => reading.ok);
  const { layout, fresh, fault } = useLayout();
  return (
    <div className="boxes stack" aria-busy={!fresh}>
      <h2 className="away">{words.views.names.boxes}</h2>
      {!sound && <ReadProblems />}
      {fault !== undefined && <p className="problem">{`${words.boxes.failed} ${fault.split("\n")[0]}`}</p>}
      {!layout && sound && fault === undefined && <p className="loading">{words.boxes.working}</p>}
      {layout?.boxes.length === 0 && <p className="lead">{words.boxes.none}</p>}
      {layout && layout.boxes.length > 0 && (
        <p className="hint" id="boxes-hint">
          {words.boxes.hint(words.boxes.nudges[lengths])}
        </p>
      )}
      {layout?.boxes.map((box) => (
        <BoxCard key={box.box} box={box} />
      ))}
      {layout && sound && <MoreBoxes />}
      {layout && (
        <p>
          <ViewLink view="gear">{words.boxes.toLists}</ViewLink>
        </p>
      )}
    </div>
  );
}
