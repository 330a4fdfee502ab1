/**
 * The API on a real socket, and a way to ask it.
 */
import { type AppOptions, buildApp } from '@stillroot/api';

/** A listening server. */
export interface Served {
  readonly origin: string;
  readonly close: () => Promise<void>;
}

/** An answer with its body read. */
export interface Answer<T> {
  readonly status: number;
  readonly type: string;
  readonly headers: Headers;
  readonly text: string;
  readonly body: T;
}

/** Listens on any free port of this machine. */
export async function serve(options: AppOptions = {}): Promise<Served> {
  const app = await buildApp(options);
  const origin = await app.listen({ host: '127.0.0.1', port: 0 });
  return { origin, close: () => app.close() };
}

/** Asks for a path; JSON bodies are read. */
export async function ask<T = Record<string, unknown>>(
  origin: string,
  path: string,
  init?: RequestInit,
): Promise<Answer<T>> {
  const response = await fetch(origin + path, { redirect: 'manual', ...init });
  const text = await response.text();
  const type = response.headers.get('content-type') ?? '';
  const body = (type.includes('json') && text !== '' ? JSON.parse(text) : undefined) as T;
  return { status: response.status, type, headers: response.headers, text, body };
}
