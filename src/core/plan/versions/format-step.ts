import type { Document } from "yaml";

/** One step from a format to the next. It changes the YAML document in place, so that comments survive. */
export interface FormatStep {
  /** Format it takes; it leaves the next one. */
  readonly from: number;
  readonly change: (document: Document.Parsed) => void;
}
