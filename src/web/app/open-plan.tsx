import { useEffect, useState } from "react";
import { openStore } from "../state/open-store.js";
import type { PlanStore } from "../state/plan-store.js";
import { PlanProvider, useWords } from "./context.js";
import { goTo } from "./place.js";
import { Shell } from "./shell.js";

/** One plan of the shelf, opened. */
export default function OpenPlan({ id }: { id: string }) {
  const words = useWords();
  const [store, setStore] = useState<PlanStore | "none" | "failed">();
  useEffect(() => {
    const opening = openStore(id);
    let wanted = true;
    const show = (found: PlanStore | "none" | "failed") => {
      if (wanted) setStore(found);
    };
    opening.then(
      ({ store: opened }) => show(opened ?? "none"),
      () => show("failed"),
    );
    return () => {
      wanted = false;
      opening.then(
        ({ close }) => close(),
        () => undefined,
      );
    };
  }, [id]);
  if (store === undefined) return <p className="loading">{words.shell.loading}</p>;
  if (store === "failed")
    return (
      <main className="page-note" role="alert">
        <p>{words.keeping.notRead}</p>
        <button type="button" onClick={() => location.reload()}>
          {words.shell.tryAgain}
        </button>
      </main>
    );
  if (store === "none")
    return (
      <main className="page-note">
        <p>{words.keeping.noPlanHere}</p>
        <button type="button" onClick={() => goTo({ at: "start" })}>
          {words.shell.toStart}
        </button>
      </main>
    );
  return (
    <PlanProvider store={store}>
      <Shell />
    </PlanProvider>
  );
}
