/**
 * The map: says what is pointed at, joins it to its neighbours, and can be walked with the arrow keys.
 */
import { invariant, parseRoot, UNIVERSE } from '@stillroot/core';
import { mapPanelHtml } from '../markup/map-panel.ts';
import { carryChosen } from './links.ts';
import { type Mark, marksNextTo, marksOf, markTowards } from './map-places.ts';
import { letZoom } from './map-zoom.ts';

/** The major scale, where routes begin. */
const START = '2212221';

/** `<map-island>` around the sizes, the box with the picture, and the panel. */
export class MapIsland extends HTMLElement {
  private marks: ReadonlyMap<string, Mark> = new Map();
  private shown: Mark | undefined;
  private chosen: Mark | undefined;
  /** What was chosen when a finger came down, before its touch chose anything. */
  private chosenBefore: Mark | undefined;

  connectedCallback(): void {
    const map = this.querySelector('.map');
    const box = this.querySelector<HTMLElement>('.map-box');
    if (!map || !box) return;
    this.marks = marksOf(map);
    map.classList.add('live');
    letZoom(this, box);
    // Listened to around the picture: one that listens to focus itself would take it.
    box.addEventListener('pointerover', (event) => this.pointed(event));
    box.addEventListener('pointerdown', () => {
      this.chosenBefore = this.chosen;
    });
    box.addEventListener('focusin', (event) => this.choose(this.markAt(event)));
    box.addEventListener('click', (event) => this.clicked(event));
    box.addEventListener('keydown', (event) => this.pressed(event));
    addEventListener('hashchange', () => this.goToAddressed());
    this.goToAddressed();
    // The mouse may rest on a mark since before there was anything to tell of it.
    const pointedAt = this.marks.get(map.querySelector('a[id]:hover')?.id ?? '');
    if (pointedAt) this.show(pointedAt);
  }

  private goToAddressed(): void {
    const mark = this.marks.get(location.hash.slice(1));
    if (!mark) return;
    this.show(mark);
    mark.link.scrollIntoView({ block: 'center', inline: 'center' });
  }

  private markAt({ target }: Event): Mark | undefined {
    const link = target instanceof Element ? target.closest('a[id]') : null;
    return link ? this.marks.get(link.id) : undefined;
  }

  private pointed(event: Event): void {
    const mark = this.markAt(event);
    if (mark) this.show(mark);
  }

  /** The first touch of a finger, which cannot point, shows; the second opens. */
  private clicked(event: Event): void {
    const mark = this.markAt(event);
    const isTouch = event instanceof PointerEvent && event.pointerType === 'touch';
    if (!mark || !isTouch || mark === this.chosenBefore) return;
    event.preventDefault();
    this.choose(mark);
  }

  private pressed(event: Event): void {
    if (!(event instanceof KeyboardEvent) || event.ctrlKey || event.metaKey || event.altKey) return;
    const from = this.markAt(event);
    const to = from && markTowards(event.key, from, this.marks);
    if (!to) return;
    event.preventDefault();
    to.link.focus();
  }

  /** Shows a mode, makes it the one that the Tab key comes back to, and puts it into the address. */
  private choose(mark: Mark | undefined): void {
    if (!mark) return;
    this.show(mark);
    this.chosen = mark;
    for (const { link } of this.marks.values()) {
      link.setAttribute('tabindex', link === mark.link ? '0' : '-1');
      if (link === mark.link) link.setAttribute('aria-current', 'true');
      else link.removeAttribute('aria-current');
    }
    history.replaceState(null, '', `${location.pathname}${location.search}#${mark.mode.id}`);
  }

  private show(mark: Mark): void {
    if (mark === this.shown) return;
    this.shown = mark;
    const near = marksNextTo(mark, this.marks);
    for (const one of this.querySelectorAll('.here, .near, .chosen'))
      one.classList.remove('here', 'near', 'chosen');
    mark.link.classList.add('here');
    mark.family.classList.add('chosen');
    this.querySelector('.map')?.classList.add('dimmed');
    for (const { link } of near) link.classList.add('near');
    const joins = this.querySelector('.joins');
    if (joins)
      joins.innerHTML = near
        .map(({ x, y }) => `<path class="join" d="M${mark.x} ${mark.y}L${x} ${y}"/>`)
        .join('');
    this.say(mark);
  }

  private say(mark: Mark): void {
    const panel = this.querySelector('.map-panel');
    const of = ({ id }: { readonly id: string }): Mark => {
      const found = this.marks.get(id);
      invariant(found !== undefined, `mode ${id} is on the map`);
      return found;
    };
    const root = parseRoot('A');
    const church = [...this.marks.values()].find(({ name }) => name === mark.mode.base.name);
    const start = UNIVERSE.modesById.get(START);
    if (!panel || !root.ok || !start) return;
    panel.innerHTML = mapPanelHtml({
      here: mark,
      base: church ?? mark,
      start: of(start),
      root: root.value,
      of,
    });
    carryChosen(panel);
    // Above the picture, since what stands below it may be below the screen as well.
    this.querySelector('.map-pointed')?.replaceChildren(`${mark.name}: ${mark.place}.`);
  }
}

customElements.define('map-island', MapIsland);
