import { awg } from "../reference/awg.js";
import { good, type QuantityResult } from "./fault.js";
import { bad } from "./kinds.js";
import { decimal, toDecimalText, toNumber } from "./rational.js";
import { plainSigns } from "./signs.js";
import { unitWritten } from "./units.js";

/** A conductor size as the trade names it. The key is what a table is looked up by: `16 AWG`, `2/0 AWG`, `1.5 mm²`. */
export interface ConductorSize {
  readonly series: "awg" | "metric";
  readonly key: string;
  /** Nominal copper area [mm²]. */
  readonly areaMm2: number;
}

const maxAreaMm2 = 1000;

/**
 * Copper area of a gauge from its definition: A = π/4 · (d36 · ratio^((36 − n)/steps))².
 * @param gauge n; 0 for 1/0, −3 for 4/0.
 * @returns Area [mm²].
 * @throws RangeError if there is no such gauge.
 */
export function awgAreaMm2(gauge: number): number {
  if (!(Number.isInteger(gauge) && gauge >= awg.thickest && gauge <= awg.thinnest))
    throw new RangeError(
      `a whole gauge from ${awg.thickest} (4/0) to ${awg.thinnest} required, got ${gauge}`,
    );
  const diameterMm = awg.d36Mm * awg.ratio ** ((36 - gauge) / awg.steps);
  return (Math.PI / 4) * diameterMm ** 2;
}

/** `16 AWG`, `2/0 AWG`, from n. */
function awgKey(gauge: number): string {
  return gauge >= 1 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`;
}

/** Reads `16 AWG`, `AWG 16`, `2/0 AWG`, `00 AWG`, `1.5 mm2`, `1.5 mm²`, `1.5 sq mm`. */
export function readConductorSize(text: string): QuantityResult<ConductorSize> {
  const plain = plainSigns(text.slice(0, 80));
  const kind = "conductor size";
  if (plain === "") return bad("empty", text, kind);
  if (/\d\s*,\s*\d/.test(plain)) return bad("comma", text, kind, { nearest: plain.replace(/\s*,\s*/g, ".") });
  const gauge = /^([\d/]+)\s*(?:AWG|ga\.? AWG)$/i.exec(plain) ?? /^AWG\s*([\d/]+)$/i.exec(plain);
  if (gauge !== null) {
    const number = gaugeNumber(gauge[1] ?? "");
    if (number === undefined) return bad("not made", text, kind);
    return good({ series: "awg", key: awgKey(number), areaMm2: awgAreaMm2(number) });
  }
  const metric = /^(\d+(?:\.\d+)?|\.\d+)\s*(?:mm2|mm²|mm\^2|sq\.? ?mm)$/i.exec(plain);
  if (metric !== null) {
    const exact = decimal(metric[1] ?? "0");
    const areaMm2 = toNumber(exact);
    if (!(areaMm2 > 0 && areaMm2 <= maxAreaMm2)) return bad("not made", text, kind);
    return good({ series: "metric", key: `${toDecimalText(exact, 12)} mm²`, areaMm2 });
  }
  if (/^[\d./]+$/.test(plain)) return bad("no unit", text, kind, { nearest: `${plain} AWG` });
  if (/^#?\s*\d+\s*(ga|gauge)\.?$/i.test(plain))
    return bad("unknown unit", text, kind, { nearest: `${/\d+/.exec(plain)?.[0]} AWG` });
  const other = unitWritten(plain.replace(/^[-+\d./ ]+/, ""));
  return other === undefined
    ? bad("unknown unit", text, kind)
    : bad("wrong kind", text, kind, { foundKind: other.dimension });
}

function gaugeNumber(digits: string): number | undefined {
  const aught = /^([1-4])\/0$/.exec(digits);
  if (aught !== null) return 1 - Number(aught[1]);
  if (/^0{1,4}$/.test(digits)) return 1 - digits.length;
  if (!/^[1-9]\d?$/.test(digits)) return undefined;
  const gauge = Number(digits);
  return gauge <= awg.thinnest ? gauge : undefined;
}
