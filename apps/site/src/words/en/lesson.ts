/**
 * The texts of lessons and of what other sites show. British English.
 */
import { counted } from './numbers.ts';

export const LESSON = {
  add: 'Add to a lesson',
  title: 'A lesson',
  description: 'A title, a note and a row of pages, each exactly as it was chosen, in one link.',
  lead: 'A lesson is a link that holds a title, a note and a row of pages, each exactly as you chose it. Nothing is stored anywhere else: whoever has the link has the lesson.',
  empty:
    'There is no page in it yet. Open a round or a scale, choose instrument, tuning and the rest, and press “Add to a lesson” above it.',
  without: 'A lesson stands in the part of its link that only a script can read, so it needs one.',
  failed: 'The names of the pages could not be fetched; the links work all the same.',
  pages: 'Pages',
  pageNames: 'The pages of this lesson',
  change: 'Change this lesson',
  titleField: 'Title',
  noteField: 'Note',
  up: 'Move up',
  down: 'Move down',
  remove: 'Remove',
  send: 'Send it',
  link: 'Link to this lesson',
  open: 'Open the lesson',
  print: 'Print',
  copyByHand: 'It could not be copied; copy it from the address line.',
  another: 'To add another page, open it and press “Add to a lesson” above it.',
  walk: 'Through the lesson',
  previous: 'Previous',
  next: 'Next',
  copy: 'Copy the link',
  copied: 'The link is copied.',
  notCopied: 'It could not be copied; it is selected, so copy it by hand.',
  code: 'QR code of this lesson',
  noCode: 'This lesson is too long for a QR code. Its link works all the same.',
  embed: 'Show it on another site',
  embedCode: 'HTML for another site',
  startAnew: 'Start a new lesson',
  changed:
    'This link has been changed or cut on its way. What can still be read of it is shown; ask whoever sent it for the whole link.',
  notPage: 'Left out, since it is no page of this site:',
  tooMany: 'Only the first pages are shown; a lesson has at most',
} as const;

export const EMBED = {
  round: 'A round, for another site',
  scale: 'A scale, for another site',
  description: 'A page to be shown within a page of another site.',
  without: 'This picture needs a script.',
  none: 'The address names nothing that is known here.',
  waiting: 'One moment …',
} as const;

/** `Round: 3 pages` */
export function pagesWords(count: number): string {
  return counted(count, 'page');
}

/** `page 2 of 3` */
export function pageOf(at: number, count: number): string {
  return `page ${at} of ${count}`;
}
