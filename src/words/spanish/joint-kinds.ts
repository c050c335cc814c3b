import type { JointKind } from "../../core/plan/model/common.js";

export const jointKinds: Readonly<Record<JointKind, string>> = {
  "crimped butt": "empalme a tope engastado",
  "sealed butt": "empalme a tope estanco",
  "solder sleeve": "manguito con soldadura",
  "soldered and sleeved": "empalme soldado y enfundado",
  "crimped ring": "terminal de anillo engastado",
  "crimped fork": "terminal de horquilla engastado",
  "push-on tab": "terminal plano enchufable",
  "screw terminal": "borne de tornillo",
  "lever clamp": "borne de palanca",
  "pin plug": "conector de clavijas",
  tap: "conector de derivación",
  "twist-on cap": "capuchón de giro",
  "twisted and taped": "empalme retorcido y encintado",
};
const byKind: ReadonlyMap<string, string> = new Map(Object.entries(jointKinds));

/** A kind of joint in Spanish, without its article: all of them take `un`. What is no kind comes back as it is. */
export const jointInSpanish = (kind: string): string => byKind.get(kind) ?? kind;
