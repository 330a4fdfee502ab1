/**
 * Printed pages, drawn by a reader of PDF that is not the browser's own: what stands on the paper, and where.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

/** A sheet of paper. */
export interface Sheet {
  readonly widthMm: number;
  readonly heightMm: number;
  /** From each edge to the nearest ink. */
  readonly marginsMm: { left: number; top: number; right: number; bottom: number };
  readonly text: string;
  /** The sheet as a PNG picture in base64. */
  readonly picture: string;
}

const READER = '/pdfjs/';
const { resolve } = createRequire(import.meta.url);

/** Draws every sheet of a PDF on a page of the stage. */
export async function sheetsOf(page: Page, pdf: Buffer): Promise<readonly Sheet[]> {
  await page.route(`**${READER}*`, async (route) => {
    const name = new URL(route.request().url()).pathname.slice(READER.length);
    const body = await readFile(resolve(`pdfjs-dist/build/${name}`));
    await route.fulfill({ body, contentType: 'text/javascript' });
  });
  await page.addScriptTag({ url: `${READER}pdf.min.mjs`, type: 'module' });
  return page.evaluate(readPdf, { data: pdf.toString('base64'), reader: READER });
}

/** Runs in the browser. */
async function readPdf({ data, reader }: { data: string; reader: string }): Promise<Sheet[]> {
  // As the reader calls itself where a page loads it.
  const { pdfjsLib: pdfjs } = globalThis as unknown as { pdfjsLib: typeof import('pdfjs-dist') };
  pdfjs.GlobalWorkerOptions.workerSrc = `${reader}pdf.worker.min.mjs`;
  const bytes = Uint8Array.from(atob(data), (character) => character.charCodeAt(0));
  const document_ = await pdfjs.getDocument({ data: bytes }).promise;
  const sheets: Sheet[] = [];
  for (let number = 1; number <= document_.numPages; number += 1) {
    const sheet = await document_.getPage(number);
    const viewport = sheet.getViewport({ scale: 1.5 });
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(viewport.width);
    canvas.height = Math.round(viewport.height);
    await sheet.render({ canvas, viewport, background: '#fff' }).promise;
    const { items } = await sheet.getTextContent();
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas');
    const { width, height } = canvas;
    const pixels = context.getImageData(0, 0, width, height).data;
    const edges = { left: width, top: height, right: 0, bottom: 0 };
    for (let y = 0; y < height; y += 1) {
      for (let x = 0; x < width; x += 1) {
        if ((pixels[4 * (y * width + x) + 1] ?? 255) > 200) continue;
        edges.left = Math.min(edges.left, x);
        edges.right = Math.max(edges.right, x + 1);
        edges.top = Math.min(edges.top, y);
        edges.bottom = Math.max(edges.bottom, y + 1);
      }
    }
    // A PDF unit is a 72nd of an inch (ISO 32000-1, section 8.3.2.3).
    const mm = 25.4 / 72 / 1.5;
    sheets.push({
      widthMm: width * mm,
      heightMm: height * mm,
      marginsMm: {
        left: edges.left * mm,
        top: edges.top * mm,
        right: (width - edges.right) * mm,
        bottom: (height - edges.bottom) * mm,
      },
      text: items.map((item) => ('str' in item ? item.str : '')).join(' '),
      picture: canvas.toDataURL().split(',')[1] ?? '',
    });
  }
  return sheets;
}
