/** What an error says, for a sentence. Some of a browser's say nothing but their name. */
export function faultReason(error: unknown): string {
  return error instanceof Error ? error.message || error.name : String(error);
}

/** The same with the place it comes from, for whoever mends the program. */
export function faultDetail(error: unknown): string {
  return error instanceof Error ? (error.stack ?? faultReason(error)) : String(error);
}
