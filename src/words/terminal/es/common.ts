import type { TerminalWords } from "../english.js";

export const common: TerminalWords["common"] = {
  words: {
    see: (command) => `skiffloom ${command} --help dice cómo`,
    noOption: (option) => `no hay ninguna opción ${option}`,
    meantOption: (name) => `; ¿querías decir --${name}?`,
    takesNone: "; no lleva ninguna",
    thereAre: (all, only) => `; ${only ? "solo hay" : "hay"} ${all}`,
    needsValue: (name) => `--${name} necesita un valor detrás`,
    takesNoValue: (name) => `--${name} no lleva valor`,
    needsPlan: (command) => `${command} necesita un archivo de plan`,
    needs: (command, what) => `${command} necesita ${what}`,
    needsRemedy: "el número de un remedio",
    needsTwoPlans: "dos archivos de plan, el antiguo y el nuevo",
    tooMany: (command, word) => `${command} no sabe qué hacer con «${word}»`,
    takes: (option, these, asked) =>
      `--${option} admite ${these.length === 2 ? these.join(" o ") : these.join(", ")}, no ${asked}`,
    takesMoment: (asked) =>
      `--now admite un día o un día y una hora, por ejemplo '2026-04-11 19:20', no ${asked}`,
    noCommand: (name, meant) =>
      `no hay ninguna orden ${name}; ${meant === undefined ? "skiffloom --help las enumera" : `¿querías decir ${meant}?`}`,
    sayFirst: (file) =>
      `di antes qué hacer con ${file}: por ejemplo skiffloom check ${file}; skiffloom --help enumera las demás`,
  },
  unknown: {
    none: (kind, asked) => `nada se llama ${asked} entre ${kind}: no hay ninguno`,
    only: (kind, asked, name) => `nada se llama ${asked} entre ${kind}; solo hay ${name}`,
    meant: (kind, asked, name) => `nada se llama ${asked} entre ${kind}; ¿querías decir '${name}'?`,
    these: (kind, asked, names) => `nada se llama ${asked} entre ${kind}; hay ${names}`,
    list: (kind, asked) => `nada se llama ${asked} entre ${kind}; hay`,
    kinds: {
      box: "las cajas",
      corner: "los casos",
      face: "las caras",
      sheet: "las partes del cuaderno",
    },
  },
  files: {
    standardInput: "entrada estándar",
    folderNotPlan: (path) => `${path} es una carpeta; hace falta un archivo de plan`,
    folder: (path) => `${path} es una carpeta; hace falta un nombre de archivo`,
    tooLarge: (path, bytes) => `${path} tiene ${bytes} bytes; un plan es mucho menor`,
    unread: (path, why) => `no se puede leer ${path}: ${why}`,
    unwritten: (path, why) => `no se puede escribir ${path}: ${why}`,
    unmade: (path, why) => `no se puede crear ${path}: ${why}`,
    noFolder: (folder) => `no existe la carpeta ${folder}`,
    noFile: "no existe ese archivo",
    meant: (path) => `; ¿querías decir ${path}?`,
    there: (path) => `${path} ya existe; --force lo sobrescribe`,
    changed: (path) => `otra cosa cambió ${path} entretanto; no se ha escrito nada. Repítelo.`,
    notText: (path) => `${path} no es texto UTF-8; guárdalo como CSV en UTF-8`,
    written: (path) => `${path}: escrito`,
    nameless: "un plan de la entrada estándar no tiene nombre: di dónde con --to ARCHIVO",
    sayWhere: "un plan de la entrada estándar no se puede reescribir: di dónde con --to ARCHIVO",
    notBack: "un plan de la entrada estándar no se puede reescribir",
  },
  system: {
    ENOENT: "no existe esa carpeta",
    EACCES: "el sistema no te lo permite",
    EPERM: "el sistema no te lo permite",
    ENOSPC: "no queda sitio en el disco",
    EDQUOT: "no te queda sitio en el disco",
    EROFS: "el disco es solo de lectura",
    ENOTDIR: "una parte de la ruta es un archivo, no una carpeta",
    ENAMETOOLONG: "el nombre es demasiado largo",
  },
  asking: {
    ended: "las respuestas se acabaron antes que las preguntas; no se ha escrito nada",
    oneOf: (words) => `una de estas: ${words}`,
  },
  findings: "Hallazgos",
  lines: (count) => `${count} ${count === 1 ? "línea" : "líneas"}`,
};
