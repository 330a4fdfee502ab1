/**
 * The first press. It makes the context of the sound at once, since browsers let only a press do so, and then
 * fetches everything else; before it, nothing of the play-along is there but a button.
 */
import { soundContext } from './play-context.ts';

/** Shows the play-along, and fetches it when it is pressed or one of its parts is opened. */
export function awaitPress(island: HTMLElement): void {
  island.hidden = false;
  let isWaking = false;
  const wake = (): void => {
    if (isWaking) return;
    isWaking = true;
    island.setAttribute('aria-busy', 'true');
    import('./play-island.ts').catch(() => {
      isWaking = false;
      island.removeAttribute('aria-busy');
      const status = island.querySelector<HTMLElement>('.play-status');
      if (status) status.textContent = status.dataset['failed'] ?? '';
    });
  };
  // The button that plays one mode alone stands beside it, wherever on the page.
  document.addEventListener('click', ({ target }) => {
    const button = (target as Element).closest<HTMLElement>('.play-go, .turn-play');
    if (!button) return;
    soundContext();
    if (customElements.get('play-island')) return;
    island.setAttribute('data-pressed', button.dataset['turn'] ?? '');
    wake();
  });
  for (const part of island.querySelectorAll('.play-part')) part.addEventListener('toggle', wake);
}
