import type { Plugin } from "vite";

const empty = "\0empty-locale";

/** Leaves out the component library's own strings in languages the page does not speak: some 30 of them, 60 kB. */
export function onlyLocales(kept: readonly string[]): Plugin {
  return {
    name: "only-locales",
    enforce: "pre",
    resolveId(specifier) {
      const locale = /\/intl\/(?:.*\/)?([a-z]{2}-[A-Z]{2})\.m?js$/.exec(specifier)?.[1];
      return locale === undefined || kept.includes(locale) ? undefined : empty;
    },
    load(id) {
      return id === empty ? "export default {};" : undefined;
    },
  };
}
