import { ruleOf } from "../../../src/core/findings/rules.js";
import type { Source } from "../../../src/core/reference/source.js";
import { levelWords } from "../../../src/words/labels.js";
import { ruleText } from "../../../src/words/rules.js";

const statusWords: Readonly<Record<Source["status"], string>> = {
  published: "published",
  memory: "from memory, confirm before relying on it",
  practice: "common practice, no source",
  computed: "computed",
};

/**
 * The page of a rule, as Markdown; `docs/rules/` holds one for each.
 * @throws RangeError if there is no such rule.
 */
export function rulePage(id: string): string {
  const rule = ruleOf(id);
  if (!rule) throw new RangeError(`a rule's id required, got ${id}`);
  const { title, why, mend, unchecked } = ruleText(id);
  const level = levelWords[rule.level];
  const lines = [
    `# ${id}`,
    "",
    `**${title}.**`,
    "",
    `Gravest level: \`${rule.level}\` (${level.means})${unchecked && rule.level !== "unchecked" ? " Gives `unchecked` where a figure is missing." : ""}`,
    "",
    "## Why",
    "",
    why,
    "",
    "## What to do",
    "",
    mend,
    "",
    "## Where it comes from",
    "",
    ...rule.sources.us.map((source) => `- us: ${sourceLine(source)}`),
    ...rule.sources.iso.map((source) => `- iso: ${sourceLine(source)}`),
    "",
    `Rule: \`src/core/findings/rules/${id}.ts\`. Local rules and the makers' instructions come first.`,
    "",
  ];
  return lines.join("\n");
}

function sourceLine({ title, place, status }: Source): string {
  if (status === "practice") return statusWords.practice;
  return `${title}, ${place} (${statusWords[status]})`;
}

/** The list of all pages, by chapter. */
export function rulesIndex(rules: readonly { readonly id: string; readonly theme: string }[]): string {
  const lines = [
    "# Rules",
    "",
    "One page a rule, written by the tests from the same data as the findings (`docs/adding-a-rule.md`).",
    "",
  ];
  for (const theme of new Set(rules.map((rule) => rule.theme))) {
    lines.push(`## ${theme}`, "");
    for (const { id } of rules.filter((rule) => rule.theme === theme)) {
      lines.push(`- [${id}](${id}.md): ${ruleText(id).title}`);
    }
    lines.push("");
  }
  return lines.join("\n");
}
