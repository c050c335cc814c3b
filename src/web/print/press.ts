import { Clerk } from "../state/clerk.js";
import type { PrintOutcome, PrintRequest } from "./messages.js";

/** Has files made beside the page. It starts when first asked, and is let go with its view. */
export class Press extends Clerk<Omit<PrintRequest, "no">, PrintOutcome> {
  constructor() {
    super(
      () => new Worker(new URL("./print-worker.ts", import.meta.url), { type: "module" }),
      (detail) => ({ is: "fault", detail }),
    );
  }
}
