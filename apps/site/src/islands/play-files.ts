/**
 * Files of the play-along to take along, made in the browser.
 */
import type { Piece, Problem } from '@stillroot/core';
import { midiFile, pieceText } from '@stillroot/notation';
import type { FileKind } from '../markup/play-panel.ts';
import { instrumentName } from '../words/names.ts';
import { timingWords } from '../words/play.ts';
import type { PlayChoices } from './play-choices.ts';
import type { Material } from './play-material.ts';
import { scoreOf, writtenInstrument } from './play-written.ts';

const TYPES: Readonly<Record<FileKind, string>> = {
  wav: 'audio/wav',
  mid: 'audio/midi',
  musicxml: 'application/vnd.recordare.musicxml+xml',
  txt: 'text/plain;charset=utf-8',
  svg: 'image/svg+xml',
};

/** Hands a file to the reader, or says what is wrong. */
export async function saveFile(
  kind: FileKind,
  material: Material,
  piece: Piece,
  choices: PlayChoices,
): Promise<Problem | undefined> {
  const made = await contentOf(kind, material, piece, choices);
  if (typeof made === 'object' && 'problem' in made) return made.problem;
  const link = document.createElement('a');
  const address = URL.createObjectURL(new Blob([made], { type: TYPES[kind] }));
  link.href = address;
  link.download = `${material.fileName}-${piece.timing.tempoBpm}.${kind}`;
  link.click();
  // The browser reads the file after the click; a moment later it has it.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  return undefined;
}

type Content = string | Uint8Array<ArrayBuffer> | { readonly problem: Problem };

async function contentOf(
  kind: FileKind,
  { title, neck }: Material,
  piece: Piece,
  { backing, metronome, mix }: PlayChoices,
): Promise<Content> {
  const drone = backing === 'drone' || backing === 'both';
  const vamp = backing === 'vamp' || backing === 'both';
  switch (kind) {
    case 'wav': {
      const { renderWav } = await import('../sound/sound.ts');
      return renderWav(piece, { drone, chords: vamp, metronome }, mix);
    }
    case 'mid': {
      const { midiProgram } = await writtenInstrument(neck.instrument.id);
      const file = midiFile(piece, {
        title,
        trackName: instrumentName(neck.instrument),
        midiProgram,
        drone,
        vamp,
      });
      return file.ok ? file.value : file;
    }
    case 'musicxml': {
      const score = await scoreOf(title, piece, neck);
      return score.ok ? score.value : score;
    }
    case 'txt':
      return pieceText(piece, neck, timingWords(piece));
    case 'svg': {
      const [{ scoreSvg }, score] = await Promise.all([
        import('./play-score-svg.ts'),
        scoreOf(title, piece, neck),
      ]);
      return score.ok ? scoreSvg(title, score.value) : score;
    }
  }
}
