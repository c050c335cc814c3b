/** The sections of a plan that say what was built: each stands at the beginning of a line. */
const built = /^["']?(?:work done|as built|projects)["']?[ ]*:/m;

/** Has something of the plan been built? Read off its text, so that the shelf can tell without reading plans. */
export function begunIn(text: string): boolean {
  return built.test(text);
}
