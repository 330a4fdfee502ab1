/**
 * Starts the server for `npm start`: the site and the API on one port, in one process or in several.
 */
import cluster from 'node:cluster';
import { flushCompileCache } from 'node:module';
import { fileURLToPath } from 'node:url';
import { readSettings, type Settings } from './settings.ts';

const settings = readSettings(process.env);
if (typeof settings === 'string') stop(settings);
else if (settings.workers > 1 && cluster.isPrimary) keepWorkers(settings);
else await listen(settings);

async function listen({ host, port, logLevel, stopDelayMs, redisUrl, ...rest }: Settings): Promise<void> {
  const { buildApp } = await import('./app.ts');
  const siteFolder = fileURLToPath(new URL('../../site/dist', import.meta.url));
  const app = await buildApp({
    siteFolder,
    ...rest,
    ...(redisUrl !== undefined && { redisUrl }),
    ...(logLevel !== 'silent' && { log: { level: logLevel } }),
  });
  try {
    const address = await app.listen({ host, port });
    // For the next start, also where this one is killed.
    flushCompileCache();
    if (cluster.isPrimary || cluster.worker?.id === 1) {
      console.log(`Stillroot is at ${address}/ and its API at ${address}/v1/docs. Stop it with Ctrl+C.`);
    }
  } catch (error) {
    stop(explain(error, host, port));
  }
  // What was begun is finished; what comes meanwhile is still answered, and told to go elsewhere.
  onSignal(() => {
    app.beginStop();
    setTimeout(() => {
      app.close().then(
        () => process.exit(0),
        () => process.exit(1),
      );
    }, stopDelayMs);
  });
}

/** Starts the processes, and another for each that ends unasked. */
function keepWorkers({ workers }: Settings): void {
  let isStopping = false;
  for (let at = 0; at < workers; at += 1) cluster.fork();
  cluster.on('exit', (worker, code) => {
    if (isStopping) return;
    // One that could not even begin would not the next time.
    if (!worker.process.pid || code === 1) stop('A process could not be started.');
    cluster.fork();
  });
  onSignal(() => {
    isStopping = true;
    for (const worker of Object.values(cluster.workers ?? {})) worker?.process.kill('SIGTERM');
  });
}

function onSignal(act: () => void): void {
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, act);
}

function explain(error: unknown, host: string, port: number): string {
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
