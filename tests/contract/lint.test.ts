/**
 * The OpenAPI document against a linter's recommended rules, and the client's types against the document.
 */
import { readFile } from 'node:fs/promises';
import { createConfig, lintFromString } from '@redocly/openapi-core';
import { openApiDocument } from '@stillroot/contract';
import { describe, expect, test } from 'vitest';
import { generateTypes } from '../../packages/client/generate.ts';

async function said(document: object): Promise<readonly string[]> {
  const config = await createConfig({ extends: ['recommended'] });
  const problems = await lintFromString({ source: JSON.stringify(document), config });
  return problems.map(({ severity, ruleId, message }) => `${severity} ${ruleId}: ${message}`);
}

describe('a linter', () => {
  test('has nothing to say of the document', async () => {
    expect(await said(openApiDocument())).toEqual([]);
  });

  test('would have something to say of a worse one', async () => {
    const worse = JSON.parse(JSON.stringify(openApiDocument()));
    delete worse.paths['/health'].get.operationId;
    worse.components.schemas.Nothing = { type: 'object' };
    const lines = await said(worse);
    expect(lines.some((line) => line.includes('operation-operationId'))).toBe(true);
    expect(lines.some((line) => line.includes('no-unused-components'))).toBe(true);
  });
});

test('the client has the types of this document: pnpm --filter @stillroot/client generate', async () => {
  const committed = await readFile(new URL('../../packages/client/src/schema.d.ts', import.meta.url), 'utf8');
  expect(committed === (await generateTypes())).toBe(true);
});
