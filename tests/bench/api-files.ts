/**
 * How long files take: asked for one after another over one connection.
 */
import { newRounds } from './api-rounds.ts';
import { middle } from './figures.ts';

const COUNT = 400;

/** Prints the median time of a round as MIDI, as MusicXML, and of the shortest answer there is. */
export async function figuresOfFiles(origin: string): Promise<void> {
  const floor = await medianMs(origin, repeat('/health'));
  for (const [extension, bar] of [
    ['.mid', 3],
    ['.musicxml', 10],
  ] as const) {
    const paths = newRounds(extension);
    await medianMs(origin, paths);
    const took = await medianMs(origin, paths);
    console.log(
      `a round never made before, as ${extension}: ${took.toFixed(2)} ms, of which ${floor.toFixed(2)} ms for any request (bar ${bar} ms)`,
    );
  }
}

async function medianMs(origin: string, paths: Iterator<string>): Promise<number> {
  const times: number[] = [];
  while (times.length < COUNT) {
    const { value } = paths.next();
    const begun = performance.now();
    const answer = await fetch(origin + value);
    await answer.arrayBuffer();
    if (answer.ok) times.push(performance.now() - begun);
  }
  return middle(times);
}

function* repeat(path: string): Generator<string> {
  while (true) yield path;
}
