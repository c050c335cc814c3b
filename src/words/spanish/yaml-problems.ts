import type { YamlWords } from "../problems/problem-words.js";

const tags = "Las etiquetas (!nombre) no se usan en los planes.";

/** The usual slips in writing YAML, in Spanish. */
export const yamlInSpanish: YamlWords = {
  slips: {
    TAB_AS_INDENT: "Hay un tabulador donde van espacios; sangra con espacios.",
    BAD_INDENT: "Esta línea tiene más o menos sangría que las líneas a las que pertenece.",
    BLOCK_AS_IMPLICIT_KEY: "Hay dos «:» en una línea; pon entre comillas el texto que lleve «: ».",
    MULTILINE_IMPLICIT_KEY:
      "Una clave va en una sola línea y termina en «:»; ¿falta arriba un «:», una coma o un corchete?",
    KEY_OVER_1024_CHARS: "Una clave es demasiado larga; ¿falta un «:»?",
    BAD_SCALAR_START: "Un texto no puede empezar con este signo; ponlo entre comillas.",
    BAD_DQ_ESCAPE:
      "Entre comillas dobles, la barra inversa empieza un signo especial; escribe dos, o usa comillas simples.",
    BAD_ALIAS: "Este *nombre no se refiere a nada escrito antes.",
    BLOCK_IN_FLOW: "Dentro de { } o [ ] todo se escribe entre comas, no en líneas con sangría.",
    MULTIPLE_ANCHORS: "Un valor puede tener un solo &nombre.",
    MULTIPLE_TAGS: tags,
    TAG_RESOLVE_FAILED: tags,
  },
  other: (detail) => `Esto no es YAML correcto; el lector de YAML lo dice en inglés: «${detail}».`,
};
