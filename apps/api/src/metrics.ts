/**
 * Figures of the server, in the text format that Prometheus reads (exposition format 0.0.4).
 */
import { monitorEventLoopDelay } from 'node:perf_hooks';
import type { AnswerCache } from './answer-cache.ts';

/** Upper ends of the buckets that durations are counted in, in seconds. */
const BUCKETS_S = [0.0001, 0.00025, 0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 1] as const;

interface Count {
  total: number;
  readonly byStatus: Map<number, number>;
  readonly buckets: Float64Array;
  seconds: number;
}

export class Metrics {
  readonly #routes = new Map<string, Count>();
  readonly #delay = monitorEventLoopDelay({ resolution: 20 });
  #hits = 0;

  constructor() {
    this.#delay.enable();
  }

  /** An answer that was kept. */
  hit(): void {
    this.#hits += 1;
  }

  /** A request that was answered. */
  record(route: string, status: number, seconds: number): void {
    let count = this.#routes.get(route);
    if (count === undefined) {
      count = { total: 0, byStatus: new Map(), buckets: new Float64Array(BUCKETS_S.length), seconds: 0 };
      this.#routes.set(route, count);
    }
    count.total += 1;
    count.seconds += seconds;
    count.byStatus.set(status, (count.byStatus.get(status) ?? 0) + 1);
    const bucket = BUCKETS_S.findIndex((end) => seconds <= end);
    if (bucket >= 0) count.buckets[bucket] = (count.buckets[bucket] as number) + 1;
  }

  /** All figures. */
  text(cache: AnswerCache, counting: string): string {
    const { rss, heapUsed } = process.memoryUsage();
    return [
      ...this.#requests(),
      ...this.#durations(),
      ...counter('stillroot_answers_kept_hits_total', 'Answers that had been made before', this.#hits),
      ...gauge('stillroot_answers_kept', 'Addresses whose answers are kept', cache.size),
      ...gauge('stillroot_answers_kept_bytes', 'What they take', cache.bytes),
      ...gauge(
        'stillroot_shared_count_lost',
        'Whether the shared count cannot be reached',
        counting === 'shared-lost' ? 1 : 0,
      ),
      ...gauge('process_resident_memory_bytes', 'Resident memory', rss),
      ...gauge('nodejs_heap_size_used_bytes', 'Heap in use', heapUsed),
      ...gauge('nodejs_eventloop_lag_p99_seconds', 'Lag of the event loop', this.#delay.percentile(99) / 1e9),
      ...gauge('process_uptime_seconds', 'Since the start', process.uptime()),
      '',
    ].join('\n');
  }

  #requests(): readonly string[] {
    const name = 'stillroot_requests_total';
    const lines = [...this.#routes].flatMap(([route, { byStatus }]) =>
      [...byStatus].map(([status, total]) => `${name}{route="${route}",status="${status}"} ${total}`),
    );
    return [`# HELP ${name} Requests answered`, `# TYPE ${name} counter`, ...lines];
  }

  #durations(): readonly string[] {
    const name = 'stillroot_request_duration_seconds';
    const lines = [...this.#routes].flatMap(([route, { total, buckets, seconds }]) => {
      let below = 0;
      const ends = BUCKETS_S.map((end, at) => {
        below += buckets[at] as number;
        return `${name}_bucket{route="${route}",le="${end}"} ${below}`;
      });
      return [
        ...ends,
        `${name}_bucket{route="${route}",le="+Inf"} ${total}`,
        `${name}_sum{route="${route}"} ${seconds}`,
        `${name}_count{route="${route}"} ${total}`,
      ];
    });
    return [`# HELP ${name} How long answers took`, `# TYPE ${name} histogram`, ...lines];
  }
}

function gauge(name: string, help: string, value: number): readonly string[] {
  return [`# HELP ${name} ${help}`, `# TYPE ${name} gauge`, `${name} ${Number.isFinite(value) ? value : 0}`];
}

function counter(name: string, help: string, value: number): readonly string[] {
  return [`# HELP ${name} ${help}`, `# TYPE ${name} counter`, `${name} ${value}`];
}
