import { useEffect, useState } from "react";
import { openStore } from "../state/open-store.js";
import type { PlanStore } from "../state/plan-store.js";
import { PlanProvider, useWords } from "./context.js";
import { goTo } from "./place.js";
import { Shell } from "./shell.js";

/** One plan of the shelf, opened. */
export default function OpenPlan({ id }: { id: string }) {
  const words = useWords();
  const [store, setStore] = useState<PlanStore | "none">();
  useEffect(() => {
    const opening = openStore(id);
    let wanted = true;
    void opening.then(({ store: opened }) => {
      if (wanted) setStore(opened ?? "none");
    });
    return () => {
      wanted = false;
      void opening.then(({ close }) => close());
    };
  }, [id]);
  if (store === undefined) return <p className="loading">{words.shell.loading}</p>;
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
