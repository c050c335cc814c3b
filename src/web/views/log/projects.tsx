import type { WorkRecord } from "../../../core/plan/model/work.js";
import { byProject } from "../../../core/work/projects.js";
import { type Spare, spareOf } from "../../../core/work/spare.js";
import { useFigures, usePlan, usePlanStore } from "../../app/context.js";
import { type CloseIt, CloseProject } from "../../garage/close-project.js";
import { ownersMinutes, useForeman } from "../../garage/use-foreman.js";
import { useMadeEdits } from "../../garage/use-made-edits.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfLog } from "../../words/log.js";

/** Projects that are finished, how the one in hand is closed, and what the next has to start from. */
export function Projects() {
  const words = useWordsOfLog().log;
  const work = usePlan(({ reading }) => (reading.ok ? reading.plan.work : undefined));
  const plan = useFigures()?.plan;
  if (work === undefined) return null;
  return (
    <section className="projects">
      <h3>{words.projects}</h3>
      {work.projects.length > 0 && <Finished projects={work.projects} />}
      <InHand work={work} />
      <h4>{words.nextProject}</h4>
      <p className="hint">{words.nextHint}</p>
      {plan && <SpareList spare={spareOf(plan)} />}
      <p>
        <ViewLink view="gear">{words.addGear}</ViewLink>
      </p>
    </section>
  );
}

function Finished({ projects }: { projects: WorkRecord["projects"] }) {
  const words = useWordsOfLog().log;
  return (
    <ul className="cards">
      {projects.map(({ name, finished, note }) => (
        <li key={name} className="step">
          <p>
            <b>
              <bdi>{name}</bdi>
            </b>{" "}
            <span className="hint">
              {finished === undefined ? words.finished : words.finishedOn(finished)}
            </span>
          </p>
          {note !== undefined && (
            <p>
              <bdi>{note}</bdi>
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}

/** The project in hand can be closed as soon as something of it is done; what is not ticked stays to do. */
function InHand({ work }: { work: WorkRecord }) {
  const words = useWordsOfLog();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const store = usePlanStore();
  const ask = useForeman();
  const { make, problem } = useMadeEdits();
  const done = byProject(work).now.workDone.length;
  if (done === 0) return <p>{words.log.nothingTicked}</p>;
  const finish: CloseIt = async (name, shelf) => {
    make(await ask({ ask: "finish", text: store.get().text, nowMin: ownersMinutes(), name, shelf }));
  };
  return (
    <>
      <h4>{words.log.inHand(done)}</h4>
      <p className="hint">{words.log.closeHint}</p>
      {problem !== undefined && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      {!readOnly && <CloseProject finish={finish} />}
    </>
  );
}

function SpareList({ spare: { ways, entries, stockLines } }: { spare: Spare }) {
  const words = useWordsOfLog().log;
  const rows: (readonly [string, string])[] = [
    ...(ways.length === 0 ? [] : [[words.spareWays, ways.join(", ")] as const]),
    ...(entries.length === 0
      ? []
      : [
          [
            words.spareEntries,
            entries.map(({ at, count }) => words.entriesAt(at, count)).join(", "),
          ] as const,
        ]),
    ...(stockLines === 0 ? [] : [[words.onTheShelf, words.stockLines(stockLines)] as const]),
  ];
  if (rows.length === 0) return <p>{words.nothingSpare}</p>;
  return (
    <dl className="given">
      {rows.map(([name, what]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            <bdi>{what}</bdi>
          </dd>
        </div>
      ))}
    </dl>
  );
}
