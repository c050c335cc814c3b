import type { TextMark } from "../text/sum.js";
import { History, type Ways } from "./history.js";
import type { Keeper } from "./keeper.js";
import type { StoredPlan } from "./plans.js";
import type { StepAbout } from "./records.js";

/** What is needed to show a plan. */
export interface OpenedPlan extends StoredPlan {
  readonly history: History;
  readonly text: string;
  readonly ways: Ways;
  /** How it came here. */
  readonly made: StepAbout | undefined;
  /** The text as it also lies outside the browser, as far as is known: in a file, or as one of the examples. */
  readonly elsewhere: TextMark | undefined;
  /** The state shown can't be put together; this is the last that can. */
  readonly brokenAfter?: number;
}

/** Reads a plan where it is kept: a few of its steps, however many there are. @returns undefined where there is no such plan. */
export async function openKept(keeper: Keeper): Promise<OpenedPlan | undefined> {
  const stored = await keeper.load();
  if (!stored) return undefined;
  const { record } = stored;
  const history = new History(keeper);
  const [text, ways, first, saved] = await Promise.all([
    history.textOf(record.head),
    history.waysAt(record),
    history.step(1),
    history.step(record.saved?.step ?? 0),
  ]);
  const made = first?.about;
  const fromOutside = made?.did === "made" && (made.from === "file" || made.from === "example");
  const opened = {
    ...stored,
    history,
    ways,
    made,
    elsewhere: record.saved ? saved : fromOutside ? first : undefined,
  };
  if (text !== undefined) return { ...opened, text };
  const sound = await history.lastSound(record.steps);
  return { ...opened, text: sound.text, brokenAfter: sound.step };
}
