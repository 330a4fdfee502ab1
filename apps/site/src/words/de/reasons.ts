/**
 * Warum etwas nicht spielbar ist, und worauf zu achten ist. German.
 */
import type * as English from '../en/reasons.ts';
import { fretWords } from '../measures.ts';
import { signs } from '../signs.ts';
import { lengthWords } from './numbers.ts';

/** Why something cannot be played, without a full stop, to be put after a colon. */
export const reasonWords: typeof English.reasonWords = (reason) => {
  switch (reason.kind) {
    case 'notes-missing':
      return `in dieser Stimmung haben die Bünde dieses Instruments kein ${signs(reason.notes.join(', kein '))}`;
    case 'beyond-the-neck':
      return `dieses Griffbrett endet am ${fretWords(reason.lastFret)}. Bund, vor Bund ${fretWords(reason.fret)}`;
    case 'no-octave':
      return reason.fret === undefined
        ? 'nirgends auf diesem Griffbrett liegt eine Oktave von Grundton zu Grundton'
        : `in einer Lage ab Bund ${fretWords(reason.fret)} liegt keine Oktave von Grundton zu Grundton`;
    case 'no-two-octaves':
      return `${fromFret(reason.fret)} liegen keine zwei Oktaven von Grundton zu Grundton`;
    case 'no-whole-octave':
      return `${fromFret(reason.fret)} liegt keine ganze Oktave`;
    case 'no-octave-on-a-string':
      return 'auf keiner Saite liegt eine ganze Oktave davon von Grundton zu Grundton';
    case 'one-string-only':
      return 'drei Töne je Saite brauchen mindestens zwei Saiten';
    case 'strings-do-not-rise':
      return 'drei Töne je Saite brauchen leere Saiten, die von einer zur nächsten steigen, und diese tun es nicht (die Stimmung ist rückläufig oder hat zwei gleiche Saiten)';
    case 'off-the-neck':
      return 'mit drei Tönen je Saite reicht das Griffbrett von dort aus nicht';
    case 'too-wide':
      return `auf Saite ${reason.string} müsste die Hand die Bünde ${frets(reason)} zugleich abdecken, ${lengthWords(reason.spanMm)}; sie reicht ${lengthWords(reason.reachMm)}`;
    case 'too-many-fingers':
      return `auf Saite ${reason.string} bräuchte jeder der Bünde ${frets(reason)} einen eigenen Finger, und so viele hat keine Hand dieser Reichweite`;
    case 'gap-in-chain':
      return 'einige Bünde liegen in keiner Lage, die alle Töne der Skala zwischen ihrem tiefsten und ihrem höchsten enthält';
    case 'chain-is-for-one-scale':
      return 'über das Griffbrett geht es Lage für Lage mit einer einzigen Skala, und eine Runde bleibt in einer Lage';
    case 'no-shared-area':
      return 'keine Lage dieses Griffbretts enthält alle sieben Modi ab diesem Grundton';
    case 'modes-left-out':
      return `nur ${reason.playable === 1 ? 'einer der sieben ist' : `${reason.playable} der sieben sind`} spielbar: Die anderen brauchen Töne, die dieses Griffbrett nicht hat`;
  }
};

/** A caution in whole sentences. */
export const cautionWords: typeof English.cautionWords = (caution) => {
  switch (caution.kind) {
    case 'wide-stretch':
      return `Die Hand öffnet sich hier auf ${caution.openingMm} mm; das ist weit für eine Hand, die ${caution.reachMm} mm reicht. Beginne höher auf dem Griffbrett, nimm einen Kapodaster oder lass die Hand wandern, und halte oder wiederhole die Dehnung nicht lange; eine Lehrkraft kann zeigen, was deiner Hand entspricht.`;
    case 'practice':
      return 'Nur allgemeine Hinweise: Wärme dich auf, steigere Dauer und Tempo schrittweise und mache oft Pausen. Höre auf, wenn Schmerzen, Taubheit oder Kribbeln auftreten, und suche ärztlichen Rat; in Fragen der Technik hilft eine ausgebildete Lehrkraft.';
  }
};

function fromFret(fret: number | undefined): string {
  return fret === undefined ? 'auf diesem Griffbrett' : `ab Bund ${fretWords(fret)} aufwärts`;
}

function frets({ frets: own }: { readonly frets: readonly number[] }): string {
  return own.map(fretWords).join(', ');
}
