/**
 * The least server that there can be: sends the bytes that another server sent, header fields included.
 */
import { createServer } from 'node:http';

const [address = ''] = process.argv.slice(2);
const answer = await fetch(address, { headers: { 'accept-encoding': 'identity' } });
const body = Buffer.from(await answer.arrayBuffer());
const own = new Set(['date', 'connection', 'keep-alive']);
const fields = [...answer.headers].filter(([name]) => !own.has(name)).flat();

const server = createServer((_request, response) => {
  response.writeHead(200, fields);
  response.end(body);
});
server.listen(0, '127.0.0.1', () => {
  const place = server.address();
  if (place !== null && typeof place === 'object') console.log(`http://127.0.0.1:${place.port}/`);
});
