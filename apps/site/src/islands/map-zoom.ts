/**
 * Sizes of the map: by its buttons, by keys, by the wheel with Control; moved by dragging. What is looked
 * at stays in the middle. The browser scrolls; nothing is animated.
 */

const KEY_STEPS: Readonly<Record<string, number>> = { '+': 1, '=': 1, '-': -1 };
/** So many pixels of the wheel are one size. */
const WHEEL_STEP = 60;
/** A press that moves less is a click. */
const CLICK_SLACK = 5;

/** Lets the box be sized and moved; keeps the size in the address. */
export function letZoom(island: HTMLElement, box: HTMLElement): void {
  const sizes = [...island.querySelectorAll<HTMLInputElement>('input[name="zoom"]')];
  const asked = new URLSearchParams(location.search).get('zoom');
  const centre = { x: 0.5, y: 0.5 };

  box.addEventListener('scroll', () => {
    centre.x = (box.scrollLeft + box.clientWidth / 2) / box.scrollWidth;
    centre.y = (box.scrollTop + box.clientHeight / 2) / box.scrollHeight;
  });
  for (const size of sizes) size.addEventListener('change', () => sized(size));
  box.addEventListener('keydown', (event) => {
    const by = KEY_STEPS[event.key];
    if (by === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    step(by);
  });
  letWheel();
  letDrag(box);
  // What was chosen while this was on its way counts more than the address.
  const wanted =
    island.querySelector('[data-touched]') === null
      ? sizes.find(({ value }) => value === asked)
      : sizes.find(({ checked }) => checked);
  if (wanted) choose(wanted);

  function step(by: number): void {
    const shown = sizes.filter((size) => size.offsetParent !== null);
    const next = shown[shown.findIndex(({ checked }) => checked) + by];
    if (next) choose(next);
  }

  function choose(size: HTMLInputElement): void {
    size.checked = true;
    sized(size);
  }

  function sized({ value }: HTMLInputElement): void {
    const { x, y } = centre;
    box.scrollLeft = x * box.scrollWidth - box.clientWidth / 2;
    box.scrollTop = y * box.scrollHeight - box.clientHeight / 2;
    const here = box.querySelector('.here');
    here?.scrollIntoView({ block: 'nearest', inline: 'center' });
    const query = new URLSearchParams(location.search);
    if (value === '1') query.delete('zoom');
    else query.set('zoom', value);
    history.replaceState(null, '', location.pathname + (query.size > 0 ? `?${query}` : '') + location.hash);
  }

  function letWheel(): void {
    let turned = 0;
    box.addEventListener(
      'wheel',
      (event) => {
        if (!event.ctrlKey) return;
        event.preventDefault();
        turned += event.deltaY;
        if (Math.abs(turned) < WHEEL_STEP) return;
        step(turned < 0 ? 1 : -1);
        turned = 0;
      },
      { passive: false },
    );
  }
}

/** Dragging with a mouse scrolls; what is dragged is not clicked. Fingers scroll by themselves. */
function letDrag(box: HTMLElement): void {
  let from:
    | { readonly x: number; readonly y: number; readonly left: number; readonly top: number }
    | undefined;
  let hasMoved = false;
  box.addEventListener('dragstart', (event) => event.preventDefault());
  box.addEventListener('pointerdown', ({ pointerType, button, clientX, clientY }) => {
    hasMoved = false;
    if (pointerType !== 'mouse' || button !== 0) return;
    from = { x: clientX, y: clientY, left: box.scrollLeft, top: box.scrollTop };
  });
  addEventListener('pointermove', ({ clientX, clientY }) => {
    if (!from) return;
    if (Math.hypot(clientX - from.x, clientY - from.y) > CLICK_SLACK) hasMoved = true;
    if (hasMoved) box.scrollTo(from.left + from.x - clientX, from.top + from.y - clientY);
  });
  addEventListener('pointerup', () => {
    from = undefined;
  });
  box.addEventListener(
    'click',
    (event) => {
      if (hasMoved) event.preventDefault();
      hasMoved = false;
    },
    { capture: true },
  );
}
