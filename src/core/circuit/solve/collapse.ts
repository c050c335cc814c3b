/** Share at which the search stops narrowing. */
const finest = 1e-9;

/**
 * Greatest share from 0 to 1 that still works, given that 0 does and 1 did not at the first try. Each trial starts from the best
 * state so far, so it follows the upper solution; halving ends after 30 trials. Where every trial works, 1 is tried once more
 * from close by.
 * @param works Tries a share; on success it keeps the state for the next trial.
 */
export function greatestShare(works: (share: number) => boolean): number {
  let good = 0;
  let bad = 1;
  while (bad - good > finest) {
    const middle = (good + bad) / 2;
    if (!works(middle)) {
      bad = middle;
      continue;
    }
    good = middle;
    // Two trials in a row worked: the first failure may just have been too long a step.
    if (good === 0.75 && works(1)) return 1;
  }
  return bad === 1 && works(1) ? 1 : good;
}
