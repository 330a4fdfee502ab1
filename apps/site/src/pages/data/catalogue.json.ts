/**
 * The catalogue as the islands fetch it.
 */
import { CATALOGUE, plainCatalogue } from '@stillroot/catalog';
import type { APIRoute } from 'astro';

export const GET: APIRoute = () => Response.json(plainCatalogue(CATALOGUE));
