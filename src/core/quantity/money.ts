/** Money in whole minor units (cents, pence) of one currency, so that sums are exact. */
export interface Money {
  /** Three letters, as on a price list: `EUR`. */
  readonly currency: string;
  readonly minor: number;
}

/** Currencies without or with other than two decimals, after ISO 4217 (recalled); all others have two. */
const decimalsOf: Readonly<Record<string, number>> = {
  JPY: 0,
  KRW: 0,
  ISK: 0,
  CLP: 0,
  BHD: 3,
  KWD: 3,
  TND: 3,
};

/** Stands where no currency is named: ISO 4217 keeps XXX for that. */
export const noCurrency = "XXX";

/** Decimals a currency is written with. */
export function currencyDecimals(currency: string): number {
  return decimalsOf[currency] ?? 2;
}

export type MoneyProblem =
  | { readonly problem: "not-a-price"; readonly text: string }
  | { readonly problem: "too-many-decimals"; readonly text: string; readonly allowed: number }
  | { readonly problem: "two-currencies"; readonly currencies: readonly string[] };

export type Sum =
  | { readonly ok: true; readonly total: Money | undefined }
  | { readonly ok: false; readonly problem: MoneyProblem };

/**
 * Reads `12.50 EUR`, `EUR 12.50` or, with a currency given, `12.50`. A comma may stand for the point; no thousands marks,
 * since `1,250` is read in two ways.
 */
export function readMoney(text: string, usual?: string): Money | MoneyProblem {
  const match = /^\s*(?:([A-Z]{3})\s+)?(\d{1,9})(?:[.,](\d+))?(?:\s+([A-Z]{3}))?\s*$/.exec(text);
  const currency = match?.[1] ?? match?.[4] ?? usual;
  if (match === null || currency === undefined || (match[1] !== undefined && match[4] !== undefined)) {
    return { problem: "not-a-price", text };
  }
  const decimals = currencyDecimals(currency);
  const fraction = match[3] ?? "";
  if (fraction.length > decimals) return { problem: "too-many-decimals", text, allowed: decimals };
  return { currency, minor: Number(`${match[2]}${fraction.padEnd(decimals, "0")}`) };
}

/** `12.50 EUR`: always the point, always the currency. Reads back unchanged. */
export function writeMoney(money: Money): string {
  if (!(Number.isSafeInteger(money.minor) && money.minor >= 0)) {
    throw new RangeError(`money must be a whole number ≥ 0 of minor units, got ${money.minor}`);
  }
  const decimals = currencyDecimals(money.currency);
  const digits = String(money.minor).padStart(decimals + 1, "0");
  if (decimals === 0) return `${digits} ${money.currency}`;
  return `${digits.slice(0, -decimals)}.${digits.slice(-decimals)} ${money.currency}`;
}

/** Adds up amounts of one currency; two currencies are a problem, never converted. */
export function sumMoney(amounts: readonly Money[]): Sum {
  const currencies = [...new Set(amounts.map((one) => one.currency))].sort();
  const [currency] = currencies;
  if (currency === undefined) return { ok: true, total: undefined };
  if (currencies.length > 1) return { ok: false, problem: { problem: "two-currencies", currencies } };
  return { ok: true, total: { currency, minor: amounts.reduce((sum, one) => sum + one.minor, 0) } };
}
