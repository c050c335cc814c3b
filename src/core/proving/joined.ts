/** Things joined one to another: which belong together is asked of `find`, the same number for all of one cluster. */
export class Joined {
  private readonly parent: Int32Array;

  constructor(count: number) {
    this.parent = Int32Array.from({ length: count }, (_, at) => at);
  }

  find(thing: number): number {
    const { parent } = this;
    let at = thing;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at] as number] as number;
      at = parent[at] as number;
    }
    return at;
  }

  join(a: number, b: number): void {
    this.parent[this.find(a)] = this.find(b);
  }
}
