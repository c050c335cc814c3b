import { lazy, Suspense } from "react";
import { useArrival } from "./arrival.js";
import { MeasuredIn, usePlan, useShows, useWords } from "./context.js";
import { FaultGuard } from "./fault-guard.js";
import { Header } from "./header.js";
import { LedgerLine } from "./ledger-line.js";
import { Notices } from "./notices.js";
import { usePlace } from "./place.js";
import { SlipArea } from "./slip-area.js";
import { SlipProvider } from "./slip-state.js";
import { Stages } from "./stages.js";
import { useTitle } from "./use-title.js";
import { forgetView, viewOf } from "./view-list.js";
import { WalkStart } from "./walk-start.js";

const ReadProblems = lazy(async () => ({ default: (await import("./read-problems.js")).ReadProblems }));

/** The frame of an open plan: header, ledger line, stages, the view one is in, and the slip of what is selected. */
export function Shell() {
  const words = useWords();
  const place = usePlace();
  const sound = usePlan(({ reading }) => reading.ok);
  const { lengths } = useShows();
  const name = usePlan(({ record }) => record.name);
  useTitle(...(place.at === "plan" ? [words.views.names[place.view]] : []), name);
  useArrival(place.at === "plan" ? place.view : "");
  if (place.at !== "plan") return null;
  const { view } = place;
  const View = viewOf(view);
  return (
    <MeasuredIn lengths={lengths}>
      <SlipProvider>
        <button type="button" className="skip" onClick={() => document.getElementById("work")?.focus()}>
          {words.shell.skip}
        </button>
        <Header view={view} />
        <LedgerLine />
        <Stages view={view} />
        <WalkStart />
        <div className="desk">
          <main id="work" tabIndex={-1} aria-label={words.views.names[view]} data-view={view}>
            <Notices />
            {!sound && (
              <Suspense fallback={null}>
                <ReadProblems />
              </Suspense>
            )}
            <FaultGuard key={view} again={() => forgetView(view)}>
              <Suspense fallback={<p className="loading">{words.shell.loading}</p>}>
                <View />
              </Suspense>
            </FaultGuard>
          </main>
          <SlipArea />
        </div>
        <footer className="foot">{words.shell.planningAid}</footer>
      </SlipProvider>
    </MeasuredIn>
  );
}
