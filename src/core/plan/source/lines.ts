/** Line and column of a character, both counted from 1. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** Finds lines in a text; made once, asked often. */
export class Lines {
  private readonly starts: number[] = [0];

  constructor(text: string) {
    for (let at = text.indexOf("\n"); at !== -1; at = text.indexOf("\n", at + 1)) this.starts.push(at + 1);
  }

  at(offset: number): LineColumn {
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - (this.starts[low] ?? 0) + 1 };
  }
}
