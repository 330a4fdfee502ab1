/**
 * Was an etwas Eingegebenem oder Gewähltem nicht stimmt. German.
 */
import type { Expectation } from '@stillroot/core';
import type * as English from '../en/problems.ts';
import { reasonWords } from './reasons.ts';

/** A problem in a sentence. */
export const problemWords: typeof English.problemWords = ({ value, expected, expectation }) => {
  const right = expectation ? expectationWords(expectation) : expected;
  return value === '' ? `Erwartet wird ${right}.` : `„${value}“: erwartet wird ${right}.`;
};

/** A problem away from its field, which is named. */
export const problemOf: typeof English.problemOf = (label, problem) =>
  label ? `${label} – ${problemWords(problem)}` : problemWords(problem);

function expectationWords(expected: Expectation): string {
  switch (expected.kind) {
    case 'root':
      return 'einer der 21 Grundtöne: ein Buchstabe von A bis G, allein oder mit einem b oder # (englische Namen: B ist H, Bb ist B)';
    case 'note':
      return 'ein Buchstabe von A bis G, dann b oder #, wie A, Bb, F# (englische Namen: B ist H, Bb ist B)';
    case 'pitch':
      return 'ein Ton mit seiner Oktave (das eingestrichene C ist C4), wie E2, F#1 oder Bb3';
    case 'helmholtz-pitch':
      return "ein Ton in der Schreibweise nach Helmholtz, wie E, (das ist E1), E (E2), e (E3) oder e' (E4)";
    case 'chord':
      return 'ein Akkordsymbol, etwa Am, E7, Bbmaj7, C#m7b5, Dsus4, G7(b9) oder D/F#';
    case 'string-count':
      return `1 bis ${expected.most} leere Saiten, tief nach hoch, wie E2-A2-D3-G3-B3-E4; hier sind es ${expected.given}`;
    case 'open-strings':
      return "leere Saiten, tief nach hoch, mit Oktavnummern (E2-A2-D3-G3-B3-E4), nach Helmholtz (E A d g b e') oder nur als Buchstaben (E A D G B E oder EADGBE)";
    case 'rising-strings':
      return 'Saiten, die jede über der vorigen liegen und bis G9 enden, oder Oktaven dazu (E2-A2-D3)';
    case 'one-notation':
      return 'eine Oktavnummer wie bei den anderen Saiten hier, etwa E2: eine Schreibweise für alle Saiten';
    case 'semitones':
      return `eine ganze Zahl von Halbtönen von ${expected.from} bis ${expected.to}, damit die Stimmung innerhalb der MIDI-Noten 0 bis ${expected.highestMidi} bleibt`;
    case 'sounding-to':
      return `leere Saiten, deren letzter Bund nicht höher klingt als ${expected.highest}`;
    case 'one-length':
      return 'eine Länge oder die Längen der beiden äußeren Saiten, nicht beides';
    case 'length-mm':
      return `eine Länge in Millimetern von ${expected.from} bis ${expected.to}`;
    case 'fret-count':
      return `eine ganze Zahl von Bünden von ${expected.from} bis ${expected.to}`;
    case 'first-fret':
      return `genug für den ersten Bund dieses Griffbretts, das ist Nummer ${expected.fret}`;
    case 'capo-fret':
      return `ein Bund dieses Griffbretts von 0 (keiner) bis ${expected.highest}`;
    case 'fret':
      return `ein Bund dieses Griffbretts von 0 (leere Saiten) bis ${expected.highest}`;
    case 'string-numbers':
      return `Saiten dieses Griffbretts mit ihrer Nummer, 1 bis ${expected.count}`;
    case 'string-below-capo':
      return `mindestens eine Saite, die unter Bund ${expected.fret} hinabreicht`;
    case 'playable-round':
      return `eine Runde, die spielbar ist: ${reasonWords(expected.reason)}`;
    case 'playable-fingering':
      return `ein Fingersatz, der spielbar ist${expected.reason ? `: ${reasonWords(expected.reason)}` : ''}`;
    case 'musicxml-octaves':
      return 'Töne in den Oktaven 0 bis 9: Andere kennt MusicXML nicht';
    case 'notes':
      return 'ein Fingersatz mit mindestens einem Ton';
    case 'piece-length':
      return `ein Stück von höchstens ${expected.mostNotes} Tönen und ${expected.mostBars} Takten; dieses hat ${expected.notes} Töne und ${expected.bars} Takte`;
    case 'tempo':
      return `eine Zahl von ${expected.from} bis ${expected.to}: Schläge pro Minute`;
    case 'meter':
      return `${expected.from} bis ${expected.to} Schläge über ${expected.units.join(', ')}, wie 4/4 oder 7/8`;
    case 'vamp':
      return `1 bis ${expected.most} Stufen von 1 bis 7, wie 1,4`;
    case 'whole-number':
      return `eine ganze Zahl von ${expected.from} bis ${expected.to}`;
    case 'one-of':
      return `eines von ${expected.choices.join(', ')}`;
  }
}
