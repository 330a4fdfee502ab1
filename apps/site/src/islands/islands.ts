/**
 * The islands: fetched when a reader chooses something.
 */
import { NeckIsland } from './neck-island.ts';
import { RoundIsland } from './round-island.ts';

customElements.define('neck-island', NeckIsland);
customElements.define('round-island', RoundIsland);
