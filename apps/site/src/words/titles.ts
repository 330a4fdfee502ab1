/**
 * Titles that the server and the browser both write, in the language of this build.
 */
import { SITE_NAME } from './interface.ts';

export * from '#words/titles.ts';

/** A page's title as a window, a list of marks or another site shows it: `Routes · Stillroot` */
export function fullTitle(title: string): string {
  return title === SITE_NAME ? title : `${title} · ${SITE_NAME}`;
}
