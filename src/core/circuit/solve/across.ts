/** Voltage from the plus to the minus node of row i [V]. */
export function acrossV(nodeV: Float64Array, plus: Int32Array, minus: Int32Array, i: number): number {
  return (nodeV[plus[i] as number] as number) - (nodeV[minus[i] as number] as number);
}
