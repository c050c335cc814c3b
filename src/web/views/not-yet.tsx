import { useWords } from "../app/context.js";

/** Stands where a view is not made yet, and says so. */
export function View() {
  const words = useWords().views;
  return (
    <div className="page-note">
      <p>{words.notYet}</p>
      <p className="hint">{words.notYetHint}</p>
    </div>
  );
}
