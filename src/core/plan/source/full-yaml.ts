import { isCollection, isMap, isScalar, parseDocument } from "yaml";
import type { Step } from "../edits/step.js";
import type { FormatStep } from "../versions/format-step.js";
import { composeYaml, yamlMistakes, yamlOptions } from "./compose.js";
import { convert } from "./convert.js";
import type { FullYaml } from "./full.js";
import { Lines } from "./lines.js";
import { type Opened, refused } from "./open.js";
import { ProblemLog, shortened } from "./problem-log.js";
import type { Written } from "./written.js";

/** By the full YAML reader, which knows all writing and names all mistakes. @throws PastLimit where the text goes past a limit. */
function openFully(text: string): Opened {
  const composed = composeYaml(text);
  if ("problem" in composed) return refused(text, 0, composed.problem);
  const [yaml, second] = composed.documents;
  if (yaml === undefined) return refused(text, 0, { code: "empty" });
  const lines = new Lines(text);
  const log = new ProblemLog(lines);
  for (const { at, ...problem } of yamlMistakes(yaml)) log.tell(at, [], problem);
  if (log.problems.length > 0) return { ok: false, problems: log.problems };
  if (second !== undefined) return refused(text, second.range[0], { code: "several documents" });
  const contents = yaml.contents;
  if (contents === null || (!isCollection(contents) && contents.source === ""))
    return refused(text, 0, { code: "empty" });
  const root = convert(contents, log);
  if (root === undefined || root.kind !== "section") {
    if (log.problems.length === 0)
      log.tell(root?.start ?? 0, [], {
        code: "wrong form",
        found: root?.kind === "scalar" ? shortened(root.text) : "list",
        expected: { kind: "form", form: "section" },
      });
    return { ok: false, problems: log.problems };
  }
  return { ok: true, document: { text, root, lines }, log };
}

function readValue(text: string): Written | undefined {
  const { contents } = parseDocument(text, yamlOptions);
  return contents === null ? undefined : convert(contents, new ProblemLog(new Lines(text)));
}

function isValue(text: string): boolean {
  const document = parseDocument(text, yamlOptions);
  const { contents } = document;
  if (document.errors.length > 0 || document.warnings.length > 0 || contents === null) return false;
  // nothing may follow the value, not even a comment: it would swallow what stands behind it
  return contents.range[1] === text.length && (!isScalar(contents) || typeof contents.value === "string");
}

/** The same steps by the YAML library, for writing that the splicer does not know; it may lay out the file anew. */
function rewriteSteps(text: string, steps: readonly Step[]): string | undefined {
  const document = parseDocument(text, yamlOptions);
  for (const { path, ...step } of steps) {
    const last = path.at(-1);
    const parent = path.length > 1 ? document.getIn(path.slice(0, -1), true) : document.contents;
    if (last === undefined) return undefined;
    if (step.do === "set") document.setIn(path, parseDocument(step.to, yamlOptions).contents);
    else if (step.do === "remove") document.deleteIn(path);
    else {
      const pair = isMap(parent)
        ? parent.items.find(({ key }) => isScalar(key) && key.source === last)
        : undefined;
      if (pair === undefined) return undefined;
      pair.key = document.createNode(step.to);
    }
  }
  return document.toString({ lineWidth: 0 });
}

function migrate(text: string, steps: readonly FormatStep[]): string {
  const yaml = parseDocument(text, yamlOptions);
  for (const step of steps) {
    step.change(yaml);
    yaml.set("skiffloom", Number(yaml.get("skiffloom")) + 1);
  }
  return yaml.toString({ lineWidth: 0 });
}

/** Reads and writes all of YAML 1.2, by the YAML library. */
export const fullYaml: FullYaml = {
  open: openFully,
  valueOf: readValue,
  isValue,
  rewrite: rewriteSteps,
  migrate,
};
