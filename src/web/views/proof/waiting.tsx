import { useWords } from "../../app/context.js";
import type { ForemanOutcome } from "../../garage/messages.js";

/** Until an answer is there; or what went wrong on the way to it. */
export function Waiting({ outcome }: { outcome: ForemanOutcome | undefined }) {
  const words = useWords();
  return outcome?.is === "fault" ? (
    <p className="problem" role="alert">
      {words.shell.viewFailed} {outcome.detail.split("\n")[0]}
    </p>
  ) : (
    <p className="loading">{words.shell.workingOut}</p>
  );
}
