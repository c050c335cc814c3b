import { afterFigures } from "./after-figures.js";
import { FigureMaker } from "./figures/figure-maker.js";
import { bringReader, withReader } from "./full-reader.js";
import type { ShelfDatabase } from "./keep/database.js";
import { databaseKeeper, type Keeper } from "./keep/keeper.js";
import { openKept } from "./keep/open-kept.js";
import { PlanStore } from "./plan-store.js";
import { shelf, tabs } from "./shelf.js";
import { keeperOfUnkept } from "./unkept.js";

interface Opened {
  readonly store: PlanStore | undefined;
  readonly close: () => void;
}

const nothing: Opened = { store: undefined, close: () => {} };

/** By plan: would something be lost if the page were closed? What is held in this tab only, or still on its way to the disk, stays here when its view is closed. */
const risks = new Map<string, () => boolean>();

function onLeave(event: BeforeUnloadEvent): void {
  if ([...risks.values()].some((atRisk) => atRisk())) event.preventDefault();
}

/** Opens a plan by its id: from the shelf, or one of those held in memory only. */
export async function openStore(id: string): Promise<Opened> {
  const unkept = keeperOfUnkept(id);
  const keeper: Keeper | undefined = unkept?.keeper ?? (await keptKeeper(id));
  const opened = keeper && (await openKept(keeper));
  if (!opened) return nothing;
  const figures = new FigureMaker();
  const tellTabs = () => tabs.tell({ plan: id });
  const store = await withReader(
    () => new PlanStore(opened, { keeper, figures, tellTabs, now: Date.now }, unkept?.readOnly),
  );
  const stopWaiting = afterFigures(store, () => void bringReader().catch(() => undefined));
  const stopListening = tabs.listen(({ plan }) => {
    if (plan === id) void store.follow();
  });
  const onShow = () => {
    if (document.visibilityState === "visible") void store.follow();
  };
  const atRisk = () => store.atRisk();
  risks.set(id, atRisk);
  document.addEventListener("visibilitychange", onShow);
  addEventListener("beforeunload", onLeave);
  return {
    store,
    close: () => {
      stopWaiting();
      stopListening();
      document.removeEventListener("visibilitychange", onShow);
      if (!unkept && !atRisk() && risks.get(id) === atRisk) risks.delete(id);
      figures.close();
    },
  };
}

async function keptKeeper(id: string): Promise<Keeper | undefined> {
  const { is } = await shelf();
  return is === "open" ? databaseKeeper(openDatabase, id) : undefined;
}

async function openDatabase(): Promise<ShelfDatabase> {
  const state = await shelf();
  if (state.is === "open") return state.database;
  throw new Error(`the browser's database is closed (${state.reason})`);
}
