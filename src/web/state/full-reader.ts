import { bringFullYaml, FullYamlMissing } from "../../core/plan/source/full.js";

let coming: Promise<void> | undefined;

/** Fetches the full YAML reader. Most plans are read without it, so it is no part of what the first paint waits for. */
export function bringReader(): Promise<void> {
  coming ??= fetchReader();
  return coming;
}

async function fetchReader(): Promise<void> {
  try {
    const { fullYaml } = await import("../../core/plan/source/full-yaml.js");
    bringFullYaml(fullYaml);
  } catch (error) {
    coming = undefined;
    throw error;
  }
}

/** Does what may want the full reader, which is fetched where it does. `work` must be able to begin anew. */
export async function withReader<T>(work: () => T): Promise<T> {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof FullYamlMissing)) throw error;
    await bringReader();
    return work();
  }
}
