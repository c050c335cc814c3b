import { usePlan, useWords } from "./context.js";

/** Whether the last edit is kept. It says so only when the browser has it on disk. */
export function KeepingMark() {
  const words = useWords().keeping;
  const keeping = usePlan((state) => state.keeping);
  const head = usePlan(({ record }) => record.head);
  const steps = usePlan(({ record }) => record.steps);
  const said = { kept: words.kept, keeping: words.keeping, failed: words.failed, unkept: words.unkept };
  return (
    <>
      <span className="keeping" data-keeping={keeping.is} data-head={head} data-steps={steps}>
        {said[keeping.is]}
      </span>
      {/* that all goes well is not read out at every edit; a failure has its own notice */}
      <span className="away" role="status">
        {keeping.is === "unkept" && said.unkept}
      </span>
    </>
  );
}
