/**
 * What was chosen from a list, in words below it where the list is too narrow to show all of it.
 */

/** A list shows an arrow beside its text: as wide as this, in shares of the size of its type (measured). */
const ARROW_EM = 1.35;

const WORDS = 'chosen-words';

/** Shows what lists below `inside` cut, and takes away what they no longer do, once the page is laid out anyway. */
export function showWhole(inside: ParentNode): void {
  requestAnimationFrame(() => showNow(inside));
}

function showNow(inside: ParentNode): void {
  const pen = document.createElement('canvas').getContext('2d');
  const lists = [...inside.querySelectorAll('select')];
  // Looked at before anything is written, so that the page is laid out once.
  const cut = lists.map((list) => (pen && isCut(list, pen) ? (list.selectedOptions[0]?.text ?? '') : ''));
  for (const [at, list] of lists.entries()) {
    const words = list.parentElement?.querySelector(`.${WORDS}`);
    if (cut[at] === '') words?.remove();
    else if (words) words.textContent = cut[at] ?? '';
    else list.after(wordsOf(cut[at] ?? ''));
  }
}

function isCut(list: HTMLSelectElement, pen: CanvasRenderingContext2D): boolean {
  const { font, fontSize, paddingLeft, paddingRight } = getComputedStyle(list);
  pen.font = font;
  const room =
    list.clientWidth -
    Number.parseFloat(paddingLeft) -
    Number.parseFloat(paddingRight) -
    ARROW_EM * Number.parseFloat(fontSize);
  return list.clientWidth > 0 && pen.measureText(list.selectedOptions[0]?.text ?? '').width > room;
}

/** For who sees it cut: who hears the list hears it whole. */
function wordsOf(text: string): HTMLElement {
  const words = document.createElement('span');
  words.className = `hint ${WORDS}`;
  words.ariaHidden = 'true';
  words.textContent = text;
  return words;
}
