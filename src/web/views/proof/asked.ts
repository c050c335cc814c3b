/** Sections of the test sheet that a step of the work leads to, by their ids; forgotten once the sheet lies open. */
let asked: readonly string[] = [];

export function askFor(sections: readonly string[]): void {
  asked = sections;
}

export function takeAsked(): readonly string[] {
  const were = asked;
  asked = [];
  return were;
}
