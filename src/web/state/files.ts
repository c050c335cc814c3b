import { readPlan } from "../../core/plan/read-text.js";
import { decodeUtf8 } from "../../core/plan/source/decode.js";
import { limits } from "../../core/plan/source/limits.js";
import { withReader } from "./full-reader.js";
import type { ReadOnly } from "./plan-state.js";
import { shelf } from "./shelf.js";
import { takeIn } from "./take-in.js";
import { holdUnkept } from "./unkept.js";

/** What a file one opened turned out to be. */
export type OpenedFile =
  | { readonly is: "plan"; readonly id: string }
  | { readonly is: "refused"; readonly because: "too large" | "empty" };

const byteOrderMark = /^\uFEFF/;

/**
 * Opens a file as a plan: a sound one goes on the shelf; a damaged or newer one is held to be looked at, and nothing is written anywhere.
 * @param handle Where the browser gives one: later saves go to the same file.
 */
export async function openFile(file: File, handle?: FileSystemFileHandle): Promise<OpenedFile> {
  if (file.size > limits.maxBytes) return { is: "refused", because: "too large" };
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (bytes.length === 0) return { is: "refused", because: "empty" };
  const decoded = decodeUtf8(bytes);
  const text = decoded.ok ? decoded.text.replace(byteOrderMark, "") : new TextDecoder().decode(bytes);
  const about = { did: "made", from: "file", name: file.name } as const;
  const read = await withReader(() => readPlan(text));
  if (!decoded.ok || !read.ok) {
    const newer = !read.ok && read.problems.some(({ code }) => code === "newer format");
    const readOnly: ReadOnly = { because: newer ? "newer" : "damaged" };
    return { is: "plan", id: holdUnkept({ name: file.name, text, about }, readOnly) };
  }
  const current = read.document.text;
  const { id, kept } = await takeIn(current, about, file.name);
  // without it the plan is saved as a copy, and nothing else is lost
  if (handle && kept) await asGoodAsCan(rememberFile(id, handle, text));
  return { is: "plan", id };
}

/** @returns undefined where the person chose none, or the browser has no such chooser (`chooseByInput` then). */
export async function chooseFile(): Promise<{ file: File; handle: FileSystemFileHandle } | undefined> {
  const [handle] = (await window.showOpenFilePicker?.(fileTypes)) ?? [];
  return handle && { file: await handle.getFile(), handle };
}

const fileTypes = {
  types: [{ description: "Skiffloom plan", accept: { "application/yaml": [".yaml", ".yml"] } }],
} as const;

export const canSaveInPlace = (): boolean => typeof window.showSaveFilePicker === "function";

async function rememberFile(plan: string, handle: FileSystemFileHandle, text: string): Promise<void> {
  const state = await shelf();
  if (state.is === "open") await state.database.put("files", { plan, handle, text });
}

/** For what is only a help the next time: it must not undo what has been done. */
const asGoodAsCan = (work: Promise<void>): Promise<void> => work.catch(() => undefined);

export type SavedFile =
  | { readonly is: "saved"; readonly file: string }
  | { readonly is: "changed meanwhile"; readonly file: string }
  | { readonly is: "not chosen" };

/** Name of the file a plan was opened from or last saved to, if the browser can write to it. */
export async function fileOf(plan: string): Promise<string | undefined> {
  const state = await shelf();
  return state.is === "open" ? (await state.database.get("files", plan))?.handle.name : undefined;
}

/**
 * Writes to the plan's own file, unless something else has changed it since; then nothing is written. Where that file is out of reach, by
 * the person's word or the browser's, it asks where else to.
 */
export async function saveInPlace(plan: string, name: string, text: string): Promise<SavedFile> {
  const state = await shelf();
  const known = state.is === "open" ? await state.database.get("files", plan) : undefined;
  if (!known) return saveElsewhere(plan, name, text);
  const { handle } = known;
  if ((await handle.requestPermission?.({ mode: "readwrite" })) === "denied")
    return saveElsewhere(plan, name, text);
  const there = (await (await handle.getFile()).text()).replace(byteOrderMark, "");
  if (there !== known.text && there !== text) return { is: "changed meanwhile", file: handle.name };
  await write(handle, text);
  await asGoodAsCan(rememberFile(plan, handle, text));
  return { is: "saved", file: handle.name };
}

/** Asks where to, writes there, and remembers it for the next time. */
export async function saveElsewhere(plan: string, name: string, text: string): Promise<SavedFile> {
  if (!window.showSaveFilePicker) {
    const file = `${fileNameOf(name)}.yaml`;
    download(new Blob([text], { type: "application/yaml" }), file);
    return { is: "saved", file };
  }
  const handle = await chosen(
    window.showSaveFilePicker({ ...fileTypes, suggestedName: `${fileNameOf(name)}.yaml` }),
  );
  if (!handle) return { is: "not chosen" };
  await write(handle, text);
  await asGoodAsCan(rememberFile(plan, handle, text));
  return { is: "saved", file: handle.name };
}

async function write(handle: FileSystemFileHandle, text: string): Promise<void> {
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
}

async function chosen(asking: Promise<FileSystemFileHandle>): Promise<FileSystemFileHandle | undefined> {
  try {
    return await asking;
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return undefined;
    throw error;
  }
}

/** Hands a file to the browser's own saving. */
export function download(blob: Blob, file: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = file;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A plan's name as a file's name: letters, figures, dashes. */
export function fileNameOf(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, "-");
  return (
    plain
      .replace(/^-+|-+$/g, "")
      .slice(0, 60)
      .toLowerCase() || "plan"
  );
}
