/** Text of UTF-8 bytes, or the place of the first byte that is no UTF-8. A byte order mark at the start is left out. */
export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly line: number; readonly column: number };

const chunk = 8192;

/** Decodes strictly: overlong forms, lone surrogates and cut sequences are refused, as RFC 3629 asks. */
export function decodeUtf8(bytes: Uint8Array): Decoded {
  const parts: string[] = [];
  let units: number[] = [];
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  while (at < bytes.length) {
    const lead = bytes[at] ?? 0;
    const length =
      lead < 0x80 ? 1 : lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : lead < 0xf5 ? 4 : 0;
    const point = length === 1 ? lead : length === 0 ? -1 : sequence(bytes, at, length);
    if (point < 0) return { ok: false, ...placeOf(bytes, at) };
    if (point < 0x10000) units.push(point);
    else units.push(0xd800 + ((point - 0x10000) >> 10), 0xdc00 + ((point - 0x10000) & 0x3ff));
    if (units.length >= chunk) {
      parts.push(String.fromCharCode(...units));
      units = [];
    }
    at += length;
  }
  parts.push(String.fromCharCode(...units));
  return { ok: true, text: parts.join("") };
}

const least = [0, 0, 0x80, 0x800, 0x10000];

/** Code point of a sequence of 2 to 4 bytes, or −1. */
function sequence(bytes: Uint8Array, at: number, length: number): number {
  let point = (bytes[at] ?? 0) & (0xff >> (length + 1));
  for (let next = 1; next < length; next++) {
    const byte = bytes[at + next] ?? 0;
    if ((byte & 0xc0) !== 0x80) return -1;
    point = (point << 6) | (byte & 0x3f);
  }
  const surrogate = point >= 0xd800 && point <= 0xdfff;
  return point < (least[length] ?? 0) || surrogate || point > 0x10ffff ? -1 : point;
}

function placeOf(bytes: Uint8Array, at: number): { line: number; column: number } {
  let line = 1;
  let column = 1;
  for (let before = 0; before < at; before++) {
    const byte = bytes[before] ?? 0;
    if (byte === 0x0a) {
      line += 1;
      column = 1;
    } else if ((byte & 0xc0) !== 0x80) column += 1;
  }
  return { line, column };
}
