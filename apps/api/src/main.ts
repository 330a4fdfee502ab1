/**
 * Starts the server for `npm start`: the site and the API on one port.
 */
import { fileURLToPath } from 'node:url';
import { buildApp } from './app.ts';

const host = process.env['HOST'] ?? '127.0.0.1';
const portText = process.env['PORT'] ?? '8080';
const port = Number(portText);

if (!/^\d+$/.test(portText) || port > 65535) {
  stop(`PORT is "${portText}"; expected a whole number from 0 to 65535.`);
}

const siteFolder = fileURLToPath(new URL('../../site/dist', import.meta.url));
const app = await buildApp({ siteFolder });

try {
  const address = await app.listen({ host, port });
  console.log(`Stillroot is at ${address}/ and its API at ${address}/v1/families. Stop it with Ctrl+C.`);
} catch (error) {
  stop(explain(error));
}

for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => {
    app.close().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  });
}

function explain(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === 'EADDRINUSE')
    return `Port ${port} on ${host} is taken. Choose another one: PORT=${port + 1} npm start`;
  if (code === 'EACCES')
    return `Port ${port} on ${host} may not be used by you. Choose one above 1023: PORT=8080 npm start`;
  if (code === 'ENOTFOUND' || code === 'EADDRNOTAVAIL')
    return `HOST is "${host}"; expected an address of this machine, such as 127.0.0.1 or 0.0.0.0.`;
  return String(error);
}

function stop(message: string): never {
  console.error(message);
  process.exit(1);
}
