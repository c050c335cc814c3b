import { Clerk } from "../state/clerk.js";
import type { ForemanOutcome, ForemanQuestion } from "./messages.js";

/** Knows the order of work, the test sheet and what readings mean; works beside the page. */
export class Foreman extends Clerk<ForemanQuestion, ForemanOutcome> {
  constructor() {
    super(
      () => new Worker(new URL("./foreman-worker.ts", import.meta.url), { type: "module" }),
      (detail) => ({ is: "fault", detail }),
    );
  }
}
