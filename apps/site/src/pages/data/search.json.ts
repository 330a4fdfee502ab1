/**
 * The index of the search as the browser fetches it.
 */
import type { APIRoute } from 'astro';
import { searchFile } from '../../facts/search-index.ts';

export const GET: APIRoute = () => Response.json(searchFile());
