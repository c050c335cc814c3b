/** What a step of a finding's working is called: each language has its word for it. */
export const workingSymbols = [
  "ΔU out and back",
  "ΔU / U nominal",
  "ΔU",
  "U at the gear",
  "I",
  "ΣI",
  "I load",
  "I start",
  "I allowed here",
  "I between them",
  "I short at the device",
  "I short at the far end",
  "R of both",
  "B",
  "L assumed",
  "rating",
  "weakest conductor allows",
  "reserve kept",
  "charge left",
  "used",
  "usable",
  "stops at",
  "after",
  "outing",
  "coldest air",
  "station",
  "far enough for the worst alone",
  "terminals",
  "studs",
  "move along",
  "move up or down",
  "from",
  "right",
  "size",
  "insulation",
] as const;
export type WorkingSymbol = (typeof workingSymbols)[number];

/** Values of a working that are no figures. */
export const workingTexts = [
  "not known",
  "unreachable by tape",
  "tape leaves the face",
  "straight tape blocked",
] as const;
export type WorkingText = (typeof workingTexts)[number];
