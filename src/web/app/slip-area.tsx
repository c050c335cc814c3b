import { lazy, Suspense } from "react";
import { useWords } from "./context.js";
import { FaultGuard } from "./fault-guard.js";
import { useSelection } from "./place.js";
import { useSlip } from "./slip-state.js";

const WorkingSlip = lazy(() => import("../views/working/working-slip.js"));
const ThingSlip = lazy(() => import("../views/slip/thing-slip.js"));

/** What is selected, or the working of a figure, laid beside the view on a desk and below it on a phone. */
export function SlipArea() {
  const words = useWords().shell;
  const [selected, select] = useSelection();
  const { working, showWorking } = useSlip();
  if (working === undefined && selected === undefined) return null;
  return (
    <FaultGuard key={selected}>
      <Suspense fallback={<aside className="slip">{words.loading}</aside>}>
        {working !== undefined ? (
          <WorkingSlip figure={working} close={() => showWorking(undefined)} />
        ) : (
          selected !== undefined && <ThingSlip name={selected} close={() => select(undefined)} />
        )}
      </Suspense>
    </FaultGuard>
  );
}
