import { lazy, type ReactNode, Suspense, useEffect, useState } from "react";
import type { ScreenWords } from "../../words/screen/en.js";
import { StartView } from "../views/start/start-view.js";
import { usePreferences, useWords, WordsProvider } from "./context.js";
import { useFocusKept } from "./focus-kept.js";
import { usePlace } from "./place.js";
import { UpdateNotice } from "./update-notice.js";

const OpenPlan = lazy(() => import("./open-plan.js"));
const NewPlanView = lazy(() => import("../views/new-plan/new-plan-view.js"));

/** The whole page: the person's language and light, and either the start view or an open plan. */
export function App() {
  const words = useLanguage();
  useLooks();
  useFocusKept();
  return (
    <WordsProvider words={words}>
      <UpdateNotice />
      <Loading>
        <Screen />
      </Loading>
    </WordsProvider>
  );
}

function Screen() {
  const place = usePlace();
  if (place.at === "new") return <NewPlanView />;
  return place.at === "start" ? <StartView /> : <OpenPlan key={place.plan} id={place.plan} />;
}

function Loading({ children }: { children: ReactNode }) {
  const words = useWords().shell;
  return <Suspense fallback={<p className="loading">{words.loading}</p>}>{children}</Suspense>;
}

function useLanguage(): ScreenWords | undefined {
  const [{ language }] = usePreferences();
  const [loaded, setLoaded] = useState<ScreenWords>();
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      const words = language === "en" ? undefined : (await import("../../words/screen/es.js")).es;
      if (!wanted) return;
      document.documentElement.lang = language;
      setLoaded(words);
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [language]);
  return loaded;
}

const percent = { usual: "100%", large: "115%", larger: "130%", largest: "150%" } as const;

function useLooks() {
  const [{ light, textSize }] = usePreferences();
  useEffect(() => {
    const page = document.documentElement;
    page.dataset.light = light;
    page.style.fontSize = percent[textSize];
    const paper = light === "dusk" ? "#14100c" : "#faf8f2";
    document.querySelector('meta[name="theme-color"]')?.setAttribute("content", paper);
    document
      .querySelector('meta[name="color-scheme"]')
      ?.setAttribute("content", light === "dusk" ? "dark" : "light");
  }, [light, textSize]);
}
