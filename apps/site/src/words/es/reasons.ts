/**
 * Por qué algo no se puede tocar, y con qué tener cuidado. Spanish.
 */
import type * as English from '../en/reasons.ts';
import { fretWords } from '../measures.ts';
import { signs } from '../signs.ts';
import { lengthWords } from './numbers.ts';

/** Why something cannot be played, without a full stop, to be put after a colon. */
export const reasonWords: typeof English.reasonWords = (reason) => {
  switch (reason.kind) {
    case 'notes-missing':
      return `en esta afinación los trastes de este instrumento no tienen ${signs(reason.notes.join(', '))}`;
    case 'beyond-the-neck':
      return `este mástil termina en el traste ${fretWords(reason.lastFret)}, antes del traste ${fretWords(reason.fret)}`;
    case 'no-octave':
      return reason.fret === undefined
        ? 'en ningún lugar de este mástil hay una octava de tónica a tónica'
        : `en una zona que empiece en el traste ${fretWords(reason.fret)} no hay ninguna octava de tónica a tónica`;
    case 'no-two-octaves':
      return `${fromFret(reason.fret)} no hay dos octavas de tónica a tónica`;
    case 'no-whole-octave':
      return `${fromFret(reason.fret)} no hay ninguna octava entera`;
    case 'no-octave-on-a-string':
      return 'ninguna cuerda tiene una octava entera de tónica a tónica';
    case 'one-string-only':
      return 'tres notas por cuerda piden al menos dos cuerdas';
    case 'strings-do-not-rise':
      return 'tres notas por cuerda piden cuerdas al aire que suban de una a la siguiente, y estas no lo hacen (la afinación es reentrante o tiene dos cuerdas iguales)';
    case 'off-the-neck':
      return 'con tres notas por cuerda, desde ahí el mástil se acaba';
    case 'too-wide':
      return `en la cuerda ${reason.string} la mano tendría que abarcar a la vez los trastes ${frets(reason)}, ${lengthWords(reason.spanMm)}; alcanza ${lengthWords(reason.reachMm)}`;
    case 'too-many-fingers':
      return `en la cuerda ${reason.string} cada uno de los trastes ${frets(reason)} pide un dedo propio, y ninguna mano de este alcance tiene tantos`;
    case 'gap-in-chain':
      return 'algunos trastes no están en ninguna zona que contenga todas las notas de la escala entre la más grave y la más aguda';
    case 'chain-is-for-one-scale':
      return 'por el mástil, zona por zona, se va con una sola escala, y una ronda se queda en una zona';
    case 'no-shared-area':
      return 'ninguna zona de este mástil contiene los siete modos desde esta tónica';
    case 'modes-left-out':
      return `${reason.playable === 1 ? 'solo se puede tocar uno' : `solo se pueden tocar ${reason.playable}`} de los siete: los demás piden notas que este mástil no tiene`;
  }
};

/** A caution in whole sentences. */
export const cautionWords: typeof English.cautionWords = (caution) => {
  switch (caution.kind) {
    case 'wide-stretch':
      return `Aquí la mano se abre ${caution.openingMm} mm, mucho para una mano que alcanza ${caution.reachMm} mm. Empieza más arriba en el mástil, usa una cejilla o deja que la mano se desplace, y no mantengas ni repitas el estiramiento mucho tiempo; un profesor puede mostrarte qué conviene a tu mano.`;
    case 'practice':
      return 'Solo información general: calienta, aumenta poco a poco la duración y el tempo y descansa a menudo. Para si sientes dolor, entumecimiento u hormigueo, y consulta a un médico; para la técnica, pregunta a un profesor cualificado.';
  }
};

function fromFret(fret: number | undefined): string {
  return fret === undefined ? 'en este mástil' : `desde el traste ${fretWords(fret)} hacia arriba`;
}

function frets({ frets: own }: { readonly frets: readonly number[] }): string {
  return own.map(fretWords).join(', ');
}
