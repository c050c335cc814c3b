/** A sum over a text (FNV-1a, 32 bits) that shows damage by chance; it is no protection against intent. */
function textSum(text: string): number {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    sum ^= text.charCodeAt(at);
    sum = Math.imul(sum, 0x01000193);
  }
  return sum >>> 0;
}

/** By what a text is known again without being held. */
export interface TextMark {
  readonly length: number;
  readonly sum: number;
}

export const markOf = (text: string): TextMark => ({ length: text.length, sum: textSum(text) });

export function isMarked({ length, sum }: TextMark, text: string): boolean {
  return text.length === length && textSum(text) === sum;
}
