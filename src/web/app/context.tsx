import { createContext, type ReactNode, useContext, useMemo, useRef, useSyncExternalStore } from "react";
import type { Figures } from "../../core/figures-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { en, type ScreenWords } from "../../words/screen/en.js";
import { figuresShown, type PlanState } from "../state/plan-state.js";
import type { PlanStore } from "../state/plan-store.js";
import { type PreferenceStore, type Preferences, showsFor } from "../state/preferences.js";
import { sameValue } from "../state/same-value.js";

const Words = createContext<ScreenWords>(en);
const Preference = createContext<PreferenceStore | undefined>(undefined);
const Plan = createContext<PlanStore | undefined>(undefined);
const Measured = createContext<Shows["lengths"]>("millimetres");

export function WordsProvider({ words, children }: { words: ScreenWords; children: ReactNode }) {
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

/** Every string on screen, in the person's language. */
export function useWords(): ScreenWords {
  return useContext(Words);
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
