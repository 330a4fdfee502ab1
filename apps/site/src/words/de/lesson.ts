/**
 * Die Texte zu Lektionen und zu dem, was andere Websites zeigen. German.
 */
import type * as English from '../en/lesson.ts';
import type { SameShape } from '../languages.ts';
import { counted } from './numbers.ts';

export const LESSON: SameShape<typeof English.LESSON> = {
  add: 'In eine Lektion aufnehmen',
  title: 'Eine Lektion',
  description:
    'Ein Titel, eine Notiz und eine Reihe von Seiten, jede genau so, wie sie gewählt war, in einem Link.',
  lead: 'Eine Lektion ist ein Link, der einen Titel, eine Notiz und eine Reihe von Seiten enthält, jede genau so, wie du sie gewählt hast. Sonst ist nichts irgendwo gespeichert: Wer den Link hat, hat die Lektion.',
  empty:
    'Noch ist keine Seite darin. Öffne eine Runde oder eine Skala, wähle Instrument, Stimmung und alles Weitere, und drücke darüber „In eine Lektion aufnehmen“.',
  without:
    'Eine Lektion steht in dem Teil ihres Links, den nur ein Skript lesen kann; darum braucht sie eines.',
  failed: 'Die Namen der Seiten konnten nicht geladen werden; die Links funktionieren trotzdem.',
  pages: 'Seiten',
  pageNames: 'Die Seiten dieser Lektion',
  change: 'Diese Lektion ändern',
  titleField: 'Titel',
  noteField: 'Notiz',
  up: 'Nach oben',
  down: 'Nach unten',
  remove: 'Entfernen',
  send: 'Verschicken',
  link: 'Link zu dieser Lektion',
  open: 'Die Lektion öffnen',
  print: 'Drucken',
  copyByHand: 'Er ließ sich nicht kopieren; kopiere ihn aus der Adresszeile.',
  another: 'Für eine weitere Seite öffne sie und drücke darüber „In eine Lektion aufnehmen“.',
  walk: 'Durch die Lektion',
  previous: 'Vorige',
  next: 'Nächste',
  copy: 'Den Link kopieren',
  copied: 'Der Link ist kopiert.',
  notCopied: 'Er ließ sich nicht kopieren; er ist markiert, kopiere ihn also von Hand.',
  code: 'QR-Code dieser Lektion',
  noCode: 'Diese Lektion ist zu lang für einen QR-Code. Ihr Link funktioniert trotzdem.',
  embed: 'Auf einer anderen Website zeigen',
  embedCode: 'HTML für eine andere Website',
  startAnew: 'Eine neue Lektion beginnen',
  changed:
    'Dieser Link wurde unterwegs verändert oder abgeschnitten. Was sich noch lesen lässt, wird gezeigt; bitte um den ganzen Link.',
  notPage: 'Ausgelassen, weil es keine Seite von hier ist:',
  tooMany: 'Nur die ersten Seiten werden gezeigt; eine Lektion hat höchstens',
};

export const EMBED: SameShape<typeof English.EMBED> = {
  round: 'Eine Runde, für eine andere Website',
  scale: 'Eine Skala, für eine andere Website',
  description: 'Eine Seite, die innerhalb einer Seite einer anderen Website gezeigt wird.',
  without: 'Dieses Bild braucht ein Skript.',
  none: 'Die Adresse nennt nichts, was hier bekannt ist.',
  waiting: 'Einen Moment …',
};

export const pagesWords: typeof English.pagesWords = (count) => counted(count, 'Seite', 'Seiten');

export const pageOf: typeof English.pageOf = (at, count) => `Seite ${at} von ${count}`;
