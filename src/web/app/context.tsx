import { createContext, type ReactNode, useContext, useMemo, useRef, useSyncExternalStore } from "react";
import type { Figures } from "../../core/figures-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { keeping } from "../../words/screen/en/keeping.js";
import { shell } from "../../words/screen/en/shell.js";
import { start } from "../../words/screen/en/start.js";
import { views } from "../../words/screen/en/views.js";
import type { ScreenWords } from "../../words/screen/en.js";
import { figuresShown, type PlanState } from "../state/plan-state.js";
import type { PlanStore } from "../state/plan-store.js";
import { type PreferenceStore, type Preferences, showsFor } from "../state/preferences.js";
import { sameValue } from "../state/same-value.js";

/** What the frame says, in English. */
const ofFrame = { keeping, shell, start, views };
type FrameWords = Pick<ScreenWords, keyof typeof ofFrame>;

/** Every string in the language chosen. Undefined: English, which comes with whatever says it. */
const Words = createContext<ScreenWords | undefined>(undefined);
const Preference = createContext<PreferenceStore | undefined>(undefined);
const Plan = createContext<PlanStore | undefined>(undefined);
const Measured = createContext<Shows["lengths"]>("millimetres");

export function WordsProvider({ words, children }: { words: ScreenWords | undefined; children: ReactNode }) {
  return <Words value={words}>{children}</Words>;
}

export function PreferencesProvider({ store, children }: { store: PreferenceStore; children: ReactNode }) {
  return <Preference value={store}>{children}</Preference>;
}

export function PlanProvider({ store, children }: { store: PlanStore; children: ReactNode }) {
  return <Plan value={store}>{children}</Plan>;
}

/** In what lengths the person measures whatever is asked inside. */
export function MeasuredIn({ lengths, children }: { lengths: Shows["lengths"]; children: ReactNode }) {
  return <Measured value={lengths}>{children}</Measured>;
}

export function useMeasured(): Shows["lengths"] {
  return useContext(Measured);
}

/** What the frame says, in the person's language. A view has a hook of its own for more (`words/`). */
export const useWords = wordsOf({});

/** A hook for what the frame and some areas say, in the person's language. The areas come, in English, with whoever imports the hook. */
export function wordsOf<Area extends keyof ScreenWords>(
  areas: Pick<ScreenWords, Area>,
): () => FrameWords & Pick<ScreenWords, Area> {
  const english = { ...ofFrame, ...areas };
  return () => useContext(Words) ?? english;
}

function needed<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new RangeError(`${what} required around this component`);
  return value;
}

/** The person's preferences and how to change them. */
export function usePreferences(): readonly [Preferences, (change: Partial<Preferences>) => void] {
  const store = needed(useContext(Preference), "PreferencesProvider");
  const preferences = useSyncExternalStore(store.subscribe, store.get);
  return [preferences, (change) => store.set(change)];
}

/** The open plan, to change it. @throws RangeError outside of an open plan. */
export function usePlanStore(): PlanStore {
  return needed(useContext(Plan), "PlanProvider");
}

/** A part of what is known of the open plan; renders again only when that part changes. */
export function usePlan<T>(part: (state: PlanState) => T): T {
  const store = usePlanStore();
  return useSyncExternalStore(store.subscribe, () => part(store.get()));
}

/** All figures to show: worked out last, or those of an edit being tried out. Undefined while there are none. */
export function useFigures(): Figures | undefined {
  return usePlan(figuresShown);
}

/**
 * Something read off the figures shown. Renders again only when it says something else: most of what a screen shows of the figures stays as
 * it is while a thing is dragged.
 */
export function useOfFigures<T>(part: (figures: Figures | undefined) => T): T {
  const store = usePlanStore();
  const last = useRef<{ readonly of: Figures | undefined; readonly part: typeof part; readonly value: T }>(
    undefined,
  );
  return useSyncExternalStore(store.subscribe, () => {
    const of = figuresShown(store.get());
    const before = last.current;
    if (before?.of === of && before?.part === part) return before.value;
    const value = part(of);
    last.current = { of, part, value: before && sameValue(before.value, value) ? before.value : value };
    return last.current.value;
  });
}

const usual: Shows = { lengths: "millimetres", conductors: "metric", paper: "a4" };

/** How lengths, conductor sizes and paper are shown to this person. */
export function useShows(): Shows {
  const [preferences] = usePreferences();
  const shows = usePlan(({ reading, outcome }) => {
    if (reading.ok) return reading.plan.shows;
    return outcome?.is === "figures" ? outcome.figures.plan.source.shows : usual;
  });
  return useMemo(() => showsFor(shows, preferences), [shows, preferences]);
}
