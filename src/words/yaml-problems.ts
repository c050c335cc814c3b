import type { YamlWords } from "./problems/problem-words.js";

/** The usual slips in writing YAML, in English. */
export const yamlInEnglish: YamlWords = {
  slips: {
    TAB_AS_INDENT: "A tab stands where blanks must; indent with blanks.",
    BAD_INDENT: "This line is indented more or less than the lines it belongs with.",
    BLOCK_AS_IMPLICIT_KEY: "Two “:” on one line; put text that holds “: ” in quotes.",
    MULTILINE_IMPLICIT_KEY:
      "A key must stand on one line and end in “:”; is a “:”, a comma or a bracket missing above?",
    KEY_OVER_1024_CHARS: "A key is too long; is a “:” missing?",
    BAD_SCALAR_START: "Text may not start with this sign; put it in quotes.",
    BAD_DQ_ESCAPE: "In double quotes a backslash starts an escape; write two, or use single quotes.",
    BAD_ALIAS: "This *name stands for nothing written before it.",
    BLOCK_IN_FLOW: "Inside { } or [ ] everything is written between commas, not as indented lines.",
    MULTIPLE_ANCHORS: "A value can have one &name only.",
    MULTIPLE_TAGS: "Tags (!name) are not used in plans.",
    TAG_RESOLVE_FAILED: "Tags (!name) are not used in plans.",
  },
  other: (detail) => `This is not sound YAML: ${detail}${/[.!?]$/.test(detail) ? "" : "."}`,
};
