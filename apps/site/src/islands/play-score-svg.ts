/**
 * The score as one SVG file that carries its font.
 */
import { drawScore, readyFont } from './play-score-draw.ts';
import { readScore } from './play-score-read.ts';

const NAMESPACE = 'http://www.w3.org/2000/svg';
/** Of a sheet of A4 between its margins, at 96 pixels an inch. */
const WIDTH = 720;
const MARGIN = 16;
const HEADING = 26;

/** Staff and tablature as the text of an SVG file. */
export async function scoreSvg(title: string, musicXml: string): Promise<string> {
  const [font] = await Promise.all([fontAddress(), readyFont()]);
  const off = document.body.appendChild(document.createElement('div'));
  off.hidden = true;
  try {
    drawScore(off, readScore(musicXml), WIDTH, (text) => text);
    const sheet = document.createElementNS(NAMESPACE, 'svg');
    let y = MARGIN;
    const write = (text: string, size: number): void => {
      const line = sheet.appendChild(document.createElementNS(NAMESPACE, 'text'));
      line.textContent = text;
      for (const [name, value] of Object.entries({
        x: MARGIN,
        y: y + size,
        'font-size': size,
        class: 'words',
      }))
        line.setAttribute(name, String(value));
      y += HEADING;
    };
    write(title, 18);
    for (const part of off.querySelectorAll('.score-part')) {
      write(part.querySelector('p')?.textContent ?? '', 14);
      for (const system of part.querySelectorAll('svg')) {
        const { height } = system.viewBox.baseVal;
        system.setAttribute('x', String(MARGIN));
        system.setAttribute('y', String(y));
        sheet.append(system);
        y += height;
      }
    }
    const style = document.createElementNS(NAMESPACE, 'style');
    style.textContent = `@font-face{font-family:"Stillroot Music";src:url(${font}) format("woff2")}svg{color:#000}.words{font-family:Georgia,serif}[fill="white"]{fill:#fff}`;
    sheet.prepend(style);
    const width = WIDTH + 2 * MARGIN;
    for (const [name, value] of Object.entries({ width, height: y, viewBox: `0 0 ${width} ${y}` }))
      sheet.setAttribute(name, String(value));
    return new XMLSerializer().serializeToString(sheet);
  } finally {
    off.remove();
  }
}

/** The font as an address that holds it. */
async function fontAddress(): Promise<string> {
  const answer = await fetch('/fonts/music.woff2');
  if (!answer.ok) throw new Error(`the music font answered ${answer.status}`);
  const bytes = new Uint8Array(await answer.arrayBuffer());
  return `data:font/woff2;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))}`;
}
