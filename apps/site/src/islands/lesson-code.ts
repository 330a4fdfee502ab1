/**
 * The QR code of a link (ISO/IEC 18004), fetched when it is asked for. The library is small, has no
 * dependency and is well kept; a code of our own would be as long and less tried.
 */
import encodeQr from 'qr';

/** The code as SVG in text; undefined where a link is too long for one. */
export function codeOf(link: string, label: string): string | undefined {
  try {
    const svg = encodeQr(link, 'svg', { ecc: 'low', border: 4 });
    return svg.replace('<svg ', `<svg class="qr" role="img" aria-label="${label}" `);
  } catch {
    return undefined;
  }
}
