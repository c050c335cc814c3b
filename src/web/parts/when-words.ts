/** A moment in the person's own manner of writing dates, with the hour. */
export function whenWords(at: number): string {
  return new Date(at).toLocaleString(document.documentElement.lang, {
    dateStyle: "medium",
    timeStyle: "short",
  });
}
