type Listener = () => void;

let waiting: ServiceWorker | undefined;
let taking = false;
const listeners = new Set<Listener>();

/** A newer version of the page that is ready and waits to be taken. */
export const update = {
  subscribe: (listener: Listener): Listener => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
  isReady: (): boolean => waiting !== undefined,
  /** Takes the newer version; the page loads anew. Everything typed is kept already. */
  take: (): void => {
    // another tab may have taken it already: then this one is only to be loaded anew
    if (waiting?.state !== "installed") location.reload();
    else {
      taking = true;
      waiting.postMessage("take over");
    }
  },
};

function ready(worker: ServiceWorker | null): void {
  // without a worker in charge this is the first visit, and there is nothing to update
  if (!worker || !navigator.serviceWorker.controller) return;
  waiting = worker;
  for (const listener of listeners) listener();
}

/** Keeps the page in the browser, so that it opens without a network. */
export function startKeepingOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (taking) location.reload();
  });
  void register();
}

async function register(): Promise<void> {
  try {
    const registration = await navigator.serviceWorker.register("./offline-worker.js");
    ready(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const worker = registration.installing;
      worker?.addEventListener("statechange", () => {
        if (worker.state === "installed") ready(worker);
      });
    });
  } catch {
    // a browser that refuses: the page works as long as the network does
  }
}
