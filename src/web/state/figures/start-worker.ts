/** A worker that works figures out; each has its own. */
export function startFiguresWorker(): Worker {
  return new Worker(new URL("./figures-worker.ts", import.meta.url), { type: "module" });
}
