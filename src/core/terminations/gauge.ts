/**
 * Number of a gauge as the wire series counts it: `16 AWG` is 16, `1/0 AWG` 0, `2/0 AWG` −1.
 * @throws RangeError on any other text.
 */
export function gaugeNumber(key: string): number {
  const match = /^(\d+)(\/0)? AWG$/.exec(key);
  if (match === null) throw new RangeError(`a gauge such as 16 AWG or 2/0 AWG required, got ${key}`);
  const number = Number(match[1]);
  return match[2] === undefined ? number : 1 - number;
}
