import type { Shows } from "../../core/plan/model/plan.js";

export const languages = ["en", "es"] as const;
export const lights = ["day", "dusk"] as const;
export const textSizes = ["usual", "large", "larger", "largest"] as const;

/** What a person sets once, kept in this browser; it never touches a plan. */
export interface Preferences {
  readonly language: (typeof languages)[number];
  readonly light: (typeof lights)[number];
  readonly lengths: "as plan" | Shows["lengths"];
  readonly paper: "as plan" | Shows["paper"];
  readonly textSize: (typeof textSizes)[number];
  /** Whether the walk through an example was taken or left. */
  readonly walk: "new" | "seen";
}

const key = "skiffloom-preferences";
const choices: { readonly [K in keyof Preferences]: readonly Preferences[K][] } = {
  language: languages,
  light: lights,
  lengths: ["as plan", "inches", "millimetres"],
  paper: ["as plan", "letter", "a4"],
  textSize: textSizes,
  walk: ["new", "seen"],
};

/** Preferences of this person, shared by all tabs. */
export class PreferenceStore {
  private readonly listeners = new Set<() => void>();
  private current: Preferences;

  constructor(private readonly storage: Storage | undefined) {
    this.current = this.read();
    addEventListener("storage", (event) => {
      if (event.key === key) this.show(this.read());
    });
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly get = (): Preferences => this.current;

  set(change: Partial<Preferences>): void {
    const next = { ...this.current, ...change };
    try {
      this.storage?.setItem(key, JSON.stringify(next));
    } catch {
      // storage is full or refused: they hold until the page is closed
    }
    this.show(next);
  }

  private show(next: Preferences): void {
    this.current = next;
    for (const listener of this.listeners) listener();
  }

  private read(): Preferences {
    const kept = parsed(this.storage?.getItem(key) ?? "{}");
    const pick = <K extends keyof Preferences>(name: K, usual: Preferences[K]): Preferences[K] =>
      choices[name].find((choice) => choice === kept[name]) ?? usual;
    const dark = matchMedia("(prefers-color-scheme: dark)").matches;
    return {
      language: pick("language", navigator.language.startsWith("es") ? "es" : "en"),
      light: pick("light", dark ? "dusk" : "day"),
      lengths: pick("lengths", "as plan"),
      paper: pick("paper", "as plan"),
      textSize: pick("textSize", "usual"),
      walk: pick("walk", "new"),
    };
  }
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

/** The browser's small storage, or undefined where it is refused. */
export function smallStorage(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}

/** How the plan's own manner of showing is overruled by the person's. */
export function showsFor(plan: Shows, { lengths, paper }: Preferences): Shows {
  return {
    ...plan,
    ...(lengths === "as plan" ? {} : { lengths }),
    ...(paper === "as plan" ? {} : { paper }),
  };
}
