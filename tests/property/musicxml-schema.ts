/**
 * The schema of MusicXML 4.0 (W3C Music Notation Community Group: musicxml.xsd, with the two that it names).
 * It is not part of the project: MUSICXML_SCHEMA_DIR says in which folder it lies.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { XmlDocument, XsdValidator } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';

/** Checks a document; throws with the line and the reason where it does not hold. */
export type CheckAgainstSchema = (text: string) => void;

/** The check, or undefined, loudly, where nobody says where the schema lies. */
export function openSchema(folder = process.env['MUSICXML_SCHEMA_DIR']): CheckAgainstSchema | undefined {
  if (!folder) {
    console.warn('MUSICXML_SCHEMA_DIR is not set: MusicXML files are NOT checked against their schema');
    return undefined;
  }
  const file = join(folder, 'musicxml.xsd');
  // As published, the schema names its neighbours by their places on the web.
  const text = readFileSync(file, 'utf8').replaceAll('http://www.musicxml.org/xsd/', '');
  xmlRegisterFsInputProviders();
  const schema = XmlDocument.fromString(text, { url: file });
  const validator = XsdValidator.fromDoc(schema);
  return (document) => {
    const parsed = XmlDocument.fromString(document);
    try {
      validator.validate(parsed);
    } finally {
      parsed.dispose();
    }
  };
}
