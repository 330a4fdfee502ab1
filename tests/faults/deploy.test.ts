/**
 * What is deployed: the manifest against the schemas of Kubernetes, which `kubernetes-models` takes from its
 * published OpenAPI document, and both it and the image against the server that they start.
 */
import { readFileSync } from 'node:fs';
import { readSettings } from '@stillroot/api/settings';
import type { IDeployment } from 'kubernetes-models/apps/v1';
import { Deployment } from 'kubernetes-models/apps/v1';
import { HorizontalPodAutoscaler } from 'kubernetes-models/autoscaling/v2';
import { PodDisruptionBudget } from 'kubernetes-models/policy/v1';
import { Service } from 'kubernetes-models/v1';
import { describe, expect, test } from 'vitest';
import { parseAllDocuments } from 'yaml';

const KINDS = { Deployment, Service, HorizontalPodAutoscaler, PodDisruptionBudget } as const;
type Kind = keyof typeof KINDS;

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const documents = parseAllDocuments(read('apps/api/deploy/kubernetes.yaml')).map(
  (one) => one.toJS() as Readonly<Record<string, unknown>>,
);
const image = read('apps/api/deploy/Containerfile');

const one = (kind: Kind) => documents.find((document) => document['kind'] === kind) ?? {};
const deployment = one('Deployment') as unknown as IDeployment;
const pod = deployment.spec?.template.spec;
const [container] = pod?.containers ?? [];
const env = Object.fromEntries((container?.env ?? []).map(({ name, value }) => [name, value]));

describe('the manifest', () => {
  test('has what runs it, what leads to it, what adds to it and what keeps one', () => {
    expect(documents.map(({ kind }) => kind)).toEqual(Object.keys(KINDS));
  });

  test.each(Object.keys(KINDS) as Kind[])('%s is as Kubernetes wants it', async (kind) => {
    const document = one(kind);
    await expect(validate(kind, document)).resolves.toBeUndefined();
    await expect(validate(kind, { ...document, metadata: { name: 7 } })).rejects.toThrow(/name/);
  });

  test('speaks of the same pods everywhere', () => {
    const labels = deployment.spec?.template.metadata?.labels;
    const selectors = documents.flatMap(({ spec }) => selectorIn(spec) ?? []);
    expect(selectors).toEqual([labels, labels, labels]);
    const { scaleTargetRef } = one('HorizontalPodAutoscaler')['spec'] as { scaleTargetRef: object };
    expect(scaleTargetRef).toEqual({
      apiVersion: deployment.apiVersion,
      kind: 'Deployment',
      name: deployment.metadata?.name,
    });
  });

  test('sets what the server knows, to what it takes', () => {
    const settings = readSettings(env);
    expect(settings).toBeTypeOf('object');
    const source = read('apps/api/src/settings.ts');
    for (const name of Object.keys(env)) expect(source).toContain(`'${name}'`);
  });

  test('lets the server say that it stops, and finish what it began', () => {
    const settings = readSettings(env);
    if (typeof settings === 'string') throw new Error(settings);
    // Longest of all, a request may take 20 seconds to arrive.
    expect(1000 * (pod?.terminationGracePeriodSeconds ?? 0)).toBeGreaterThan(settings.stopDelayMs + 20_000);
    const { periodSeconds = 0, failureThreshold = 0 } = container?.readinessProbe ?? {};
    expect(settings.stopDelayMs).toBeGreaterThan(1000 * periodSeconds * failureThreshold);
  });

  test('asks the server at the port and the addresses that it has', () => {
    const [port] = container?.ports ?? [];
    expect(image).toContain(`EXPOSE ${port?.containerPort}\n`);
    const { startupProbe, readinessProbe, livenessProbe } = container ?? {};
    const probes = [startupProbe, readinessProbe, livenessProbe].map((probe) => probe?.httpGet);
    expect(probes.map((probe) => probe?.path)).toEqual(['/ready', '/ready', '/health']);
    expect(probes.every((probe) => probe?.port === port?.name)).toBe(true);
  });
});

test('the server has the same room everywhere it is started', () => {
  const room = /--min-semi-space-size=\d+ --max-semi-space-size=\d+ --max-old-space-size=\d+/g;
  const flags = [
    ...(read('package.json').match(room) ?? []),
    ...(image.replaceAll('", "', ' ').match(room) ?? []),
    ...(read('tests/bench/api-servers.ts').replaceAll("', '", ' ').match(room) ?? []),
  ];
  expect(flags).toHaveLength(4);
  expect(new Set(flags).size).toBe(1);
});

async function validate(kind: Kind, document: Readonly<Record<string, unknown>>): Promise<void> {
  await new KINDS[kind](document as never).validate();
}

/** The labels by which a part of the manifest picks pods. */
function selectorIn(spec: unknown): unknown {
  const { selector } = spec as { selector?: { matchLabels?: unknown } };
  return selector?.matchLabels ?? selector;
}
