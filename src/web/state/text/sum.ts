/** A sum over a text (FNV-1a, 32 bits) that shows damage by chance; it is no protection against intent. */
export function textSum(text: string): number {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    sum ^= text.charCodeAt(at);
    sum = Math.imul(sum, 0x01000193);
  }
  return sum >>> 0;
}
