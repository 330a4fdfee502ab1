/**
 * Contract: what the API takes and answers, its problems, and the OpenAPI document of it all.
 */
export * as answers from './answers.ts';
export { ENDPOINTS, type Endpoint, type EndpointName, type Format } from './endpoints.ts';
export { openApiDocument } from './openapi.ts';
export { PROBLEM_KINDS, type ProblemKind, type ProblemName, problemType } from './problems.ts';
export { PATTERNS, type Pattern, TEMPO_RANGE_BPM } from './requests.ts';
