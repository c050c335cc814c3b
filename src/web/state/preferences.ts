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

const darkDevice = matchMedia("(prefers-color-scheme: dark)");

/** Preferences of this person, shared by all tabs. */
export class PreferenceStore {
  private readonly listeners = new Set<() => void>();
  /** What this person has chosen; all else is as the device has it, and follows it. */
  private chosen: Readonly<Record<string, unknown>>;
  private current: Preferences;

  constructor(private readonly storage: Storage | undefined) {
    this.chosen = this.kept();
    this.current = this.read();
    addEventListener("storage", (event) => {
      if (event.key !== key) return;
      this.chosen = this.kept();
      this.show(this.read());
    });
    darkDevice.addEventListener("change", () => this.show(this.read()));
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly get = (): Preferences => this.current;

  set(change: Partial<Preferences>): void {
    this.chosen = { ...this.chosen, ...change };
    try {
      this.storage?.setItem(key, JSON.stringify(this.chosen));
    } catch {
      // storage is full or refused: they hold until the page is closed
    }
    this.show(this.read());
  }

  private kept(): Readonly<Record<string, unknown>> {
    return parsed(this.storage?.getItem(key) ?? "{}");
  }

  private show(next: Preferences): void {
    this.current = next;
    for (const listener of this.listeners) listener();
  }

  private read(): Preferences {
    const pick = <K extends keyof Preferences>(name: K, usual: Preferences[K]): Preferences[K] =>
      choices[name].find((choice) => choice === this.chosen[name]) ?? usual;
    return {
      language: pick("language", navigator.language.startsWith("es") ? "es" : "en"),
      light: pick("light", darkDevice.matches ? "dusk" : "day"),
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
