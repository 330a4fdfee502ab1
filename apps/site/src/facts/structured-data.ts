/**
 * What a page says of itself to machines: JSON-LD in the terms of schema.org.
 */
import { SITE_NAME } from '../words/interface.ts';
import { LANGUAGE } from '../words/language.ts';
import { pagePath, searchPath } from './paths.ts';

/** A page as far as machines are told of it. */
export interface DescribedPage {
  /** The full address of a path. */
  readonly address: (path: string) => string;
  readonly here: string;
  readonly title: string;
  readonly trail: readonly { readonly path: string; readonly text: string }[];
  /** The one thing that the page defines, if any. */
  readonly item: Readonly<Record<string, unknown>> | undefined;
}

/** The page's data as the content of a script element; empty where there is nothing to say. */
export function structuredData({ address, here, title, trail, item }: DescribedPage): string {
  const things: readonly object[] = [
    ...(here === pagePath('/') ? [webSite(address)] : []),
    ...(trail.length > 0 ? [breadcrumbs(address, [...trail, { path: here, text: title }])] : []),
    ...(item ? [{ ...item, inLanguage: LANGUAGE, url: address(here) }] : []),
  ];
  if (things.length === 0) return '';
  const data = things.length === 1 ? things[0] : { '@graph': things };
  // A `<` could end the script element.
  return JSON.stringify({ '@context': 'https://schema.org', ...data }).replaceAll('<', '\\u003c');
}

/** A mode or a family, as a term that is defined. */
export function definedTerm(
  name: string,
  aliases: readonly string[],
  code: string,
): Readonly<Record<string, unknown>> {
  return {
    '@type': 'DefinedTerm',
    name,
    ...(aliases.length > 0 && { alternateName: aliases }),
    termCode: code,
  };
}

function webSite(address: DescribedPage['address']): object {
  return {
    '@type': 'WebSite',
    name: SITE_NAME,
    url: address(pagePath('/')),
    inLanguage: LANGUAGE,
    potentialAction: {
      '@type': 'SearchAction',
      target: { '@type': 'EntryPoint', urlTemplate: `${address(searchPath())}?q={search_term_string}` },
      'query-input': 'required name=search_term_string',
    },
  };
}

function breadcrumbs(address: DescribedPage['address'], trail: DescribedPage['trail']): object {
  return {
    '@type': 'BreadcrumbList',
    itemListElement: trail.map(({ path, text }, at) => ({
      '@type': 'ListItem',
      position: at + 1,
      name: text,
      item: address(path),
    })),
  };
}
