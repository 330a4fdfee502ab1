/**
 * The least server that there can be: sends the bytes that another server sent, header fields included. It may
 * be made to reckon for as long as answers take that are made anew, and shows then what the machine alone lets
 * requests wait for: it makes no objects.
 */
import { createServer } from 'node:http';

const [address = '', workMs = '0'] = process.argv.slice(2);
const answer = await fetch(address, { headers: { 'accept-encoding': 'identity' } });
const body = Buffer.from(await answer.arrayBuffer());
const own = new Set(['date', 'connection', 'keep-alive']);
const fields = [...answer.headers].filter(([name]) => !own.has(name)).flat();

/** What is reckoned with, made once. */
const table = new Int32Array(1000);
const turnsEach = Number(workMs) > 0 ? Math.round(Number(workMs) * turnsAMillisecond()) : 0;

const server = createServer((_request, response) => {
  if (turnsEach > 0) reckon(turnsEach);
  response.writeHead(200, fields);
  response.end(body);
});
server.listen(0, '127.0.0.1', () => {
  const place = server.address();
  if (place !== null && typeof place === 'object') console.log(`http://127.0.0.1:${place.port}/`);
});

/** Adds to a table again and again, a thousand numbers a turn. */
function reckon(turns: number): void {
  for (let turn = 0; turn < turns; turn += 1)
    for (let at = 0; at < table.length; at += 1) table[at] = (table[at] as number) + (at ^ turn);
}

/** Measured when all is compiled. */
function turnsAMillisecond(): number {
  const turns = 100_000;
  reckon(turns);
  const begun = performance.now();
  reckon(turns);
  return turns / (performance.now() - begun);
}
