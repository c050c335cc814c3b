/** What any command may have to say: of its words, of files, of names there are not. */
export const common = {
  words: {
    see: (command: string) => `skiffloom ${command} --help tells how`,
    noOption: (option: string) => `there is no option ${option}`,
    meantOption: (name: string) => `; did you mean --${name}?`,
    takesNone: "; it takes none",
    thereAre: (all: string, only: boolean) => `; there ${only ? "is only" : "are"} ${all}`,
    needsValue: (name: string) => `--${name} needs a value after it`,
    takesNoValue: (name: string) => `--${name} takes no value`,
    needsPlan: (command: string) => `${command} needs a plan file`,
    needs: (command: string, what: string) => `${command} needs ${what}`,
    needsRemedy: "the number of a remedy",
    needsTwoPlans: "two plan files, the old and the new",
    tooMany: (command: string, word: string) => `${command} does not know what to do with "${word}"`,
    takes: (option: string, these: readonly string[], asked: string) =>
      `--${option} takes ${these.length === 2 ? these.join(" or ") : these.join(", ")}, not ${asked}`,
    takesMoment: (asked: string) =>
      `--now takes a day or a day and time, such as '2026-04-11 19:20', not ${asked}`,
    noCommand: (name: string, meant: string | undefined) =>
      `there is no command ${name}; ${meant === undefined ? "skiffloom --help lists them" : `did you mean ${meant}?`}`,
    sayFirst: (file: string) =>
      `say first what to do with ${file}: skiffloom check ${file}, for one; skiffloom --help lists the rest`,
  },
  unknown: {
    none: (kind: string, asked: string) => `no ${kind} is called ${asked}; there is none`,
    only: (kind: string, asked: string, name: string) =>
      `no ${kind} is called ${asked}; there is only ${name}`,
    meant: (kind: string, asked: string, name: string) =>
      `no ${kind} is called ${asked}; did you mean '${name}'?`,
    these: (kind: string, asked: string, names: string) =>
      `no ${kind} is called ${asked}; there are ${names}`,
    list: (kind: string, asked: string) => `no ${kind} is called ${asked}; there are`,
    kinds: { box: "box", corner: "corner", face: "face", sheet: "part of the packet" },
  },
  files: {
    standardInput: "standard input",
    folderNotPlan: (path: string) => `${path} is a folder; a plan file is wanted`,
    folder: (path: string) => `${path} is a folder; a file name is wanted`,
    tooLarge: (path: string, bytes: number) => `${path} is ${bytes} bytes; a plan is far smaller`,
    unread: (path: string, why: string) => `${path} can't be read: ${why}`,
    unwritten: (path: string, why: string) => `${path} can't be written: ${why}`,
    unmade: (path: string, why: string) => `${path} can't be made: ${why}`,
    noFolder: (folder: string) => `there is no folder ${folder}`,
    noFile: "there is no such file",
    meant: (path: string) => `; did you mean ${path}?`,
    there: (path: string) => `${path} is there already; --force writes over it`,
    changed: (path: string) =>
      `${path} was changed by something else meanwhile; nothing was written. Run it again.`,
    notText: (path: string) => `${path} is not UTF-8 text; save it as CSV in UTF-8`,
    written: (path: string) => `${path} written`,
    nameless: "a plan from standard input has no name: say where with --to FILE",
    sayWhere: "a plan from standard input can't be written back: say where with --to FILE",
    notBack: "a plan from standard input can't be written back",
  },
  system: {
    ENOENT: "there is no such folder",
    EACCES: "the system does not allow it to you",
    EPERM: "the system does not allow it to you",
    ENOSPC: "there is no room left on the disk",
    EDQUOT: "there is no room left for you on the disk",
    EROFS: "the disk is for reading only",
    ENOTDIR: "a part of the path is a file, not a folder",
    ENAMETOOLONG: "the name is too long",
  },
  asking: {
    ended: "the answers ended before the questions did; nothing was written",
    oneOf: (words: string) => `one of ${words}, please`,
  },
  findings: "Findings",
  lines: (count: number) => `${count} ${count === 1 ? "line" : "lines"}`,
};
