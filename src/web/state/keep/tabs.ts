/** Word that passes between tabs of this browser: a plan has changed, or is gone. */
export interface TabWord {
  readonly plan: string;
}

/** Tells other tabs, and listens to them. */
export class Tabs {
  private readonly channel = new BroadcastChannel("skiffloom-plans");
  private readonly listeners = new Set<(word: TabWord) => void>();

  constructor() {
    this.channel.onmessage = ({ data }: MessageEvent<TabWord>) => {
      for (const listener of this.listeners) listener(data);
    };
  }

  tell(word: TabWord): void {
    this.channel.postMessage(word);
  }

  /** @returns how to stop listening. */
  listen(listener: (word: TabWord) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
