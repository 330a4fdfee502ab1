/**
 * Where a neck that is wider than its box is seen first.
 */

/** Scrolls necks shown in their whole length to a fret; without one to the nut, which is right on a left-handed neck. */
export function scrollNecks(island: Element, fret: number | undefined): void {
  for (const box of island.querySelectorAll<HTMLElement>('.neck-box.whole')) {
    const isLeft = box.classList.contains('left');
    const number = fret === undefined ? undefined : lastNumberTo(box, fret);
    if (number) {
      const { left, width } = box.getBoundingClientRect();
      // What is below the fret stays in sight a little.
      box.scrollLeft += number.getBoundingClientRect().left - left - width * (isLeft ? 0.85 : 0.15);
    } else if (isLeft) box.scrollLeft = box.scrollWidth;
  }
}

/** The last number beside a neck that is no higher than a fret. */
function lastNumberTo(box: Element, fret: number): Element | undefined {
  return [...box.querySelectorAll('.number > *')].filter((one) => Number(one.textContent) <= fret).at(-1);
}
