/**
 * Contract: what the API takes and answers, its problems, and the OpenAPI document of it all.
 */
export * as answers from './answers.ts';
export {
  ENDPOINTS,
  type Endpoint,
  type EndpointName,
  FORMATS,
  type Format,
  MEDIA_TYPES,
  SUBJECTS,
  type Subject,
} from './endpoints.ts';
export { openApiDocument } from './openapi.ts';
export { PROBLEM_KINDS, type ProblemKind, type ProblemName, problemType } from './problems.ts';
export { CommonQuery } from './requests.ts';
export { type CodeSample, codeSamples } from './samples.ts';
