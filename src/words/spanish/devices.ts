import type { ConditionResult, ProtectionCondition } from "../../core/circuit/protection/types.js";
import type { DeviceAt } from "../../core/findings/devices.js";
import type { Protection } from "../../core/plan/model/common.js";

/** A fuse or breaker by its kind; all are masculine, so that `el` and `del` stand before any of them. */
export const devices: Readonly<Record<Protection["device"], string>> = {
  "blade fuse": "fusible de cuchilla",
  "bolted fuse": "fusible atornillado",
  "cartridge fuse": "fusible de cartucho",
  breaker: "disyuntor",
};
export const protectionKinds: Readonly<Record<string, string>> = devices;

/** What a finding calls a device. */
export const deviceKinds: Readonly<Record<string, string>> = {
  fuse: "fusible",
  switch: "interruptor",
} satisfies Record<DeviceAt["kind"], string>;

/** What a device must do, each condition in a few words. */
export const conditionWords: Readonly<Record<ProtectionCondition, string>> = {
  "carries-load": "lleva la carga",
  "rides-start": "aguanta el arranque",
  "protects-weakest": "protege el conductor más débil",
  "gear-limit": "no pasa del límite del aparato",
  "clears-far-short": "abre un cortocircuito en el extremo",
  "withstands-short": "el conductor resiste el cortocircuito",
  interrupts: "puede cortar lo que da la batería",
  "near-source": "bastante cerca de la fuente",
  "before-main": "abre antes que el fusible general",
};

export const stateWords: Readonly<Record<ConditionResult["state"], string>> = {
  holds: "se cumple",
  fails: "no se cumple",
  unchecked: "sin comprobar",
};
