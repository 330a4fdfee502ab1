/**
 * The full sweep: a round of every family from twelve roots on every tuning of every instrument of the
 * catalogue, each checked note by note. Every one of the 462 modes is in one of the rounds. Ends with a
 * failure where one is unsound.
 */
import { CATALOGUE } from '@stillroot/catalog';
import { buildNeck, DEFAULT_REACH_MM, invariant, roundOf } from '@stillroot/core';
import { faultOf } from './faults.ts';
import { TWELVE_ROOTS } from './roots.ts';

const counts = { rounds: 0, whole: 0, partly: 0, refused: 0, modes: 0, unsound: 0 };
const reasons = new Map<string, number>();
const begun = performance.now();

for (const instrument of CATALOGUE.instruments) {
  const before = { ...counts };
  for (const tuning of instrument.tunings) {
    const neck = buildNeck(instrument, tuning);
    invariant(neck.ok, `${instrument.id} has a neck in ${tuning.id}`);
    for (const family of CATALOGUE.families) {
      for (const root of TWELVE_ROOTS) {
        const round = roundOf(neck.value, family.head.mode, root);
        const fault = faultOf(neck.value, round, DEFAULT_REACH_MM);
        const played = round.modes.filter(({ fingering }) => fingering !== undefined).length;
        counts.rounds += 1;
        counts.modes += played;
        counts.whole += Number(played === 7);
        counts.partly += Number(played > 0 && played < 7);
        counts.refused += Number(played === 0);
        if (round.reason && played === 0) {
          const { kind } = round.reason;
          reasons.set(kind, (reasons.get(kind) ?? 0) + 1);
        }
        if (fault) {
          counts.unsound += 1;
          console.error(`${instrument.id} ${tuning.id} ${family.slug} ${root.name}: ${fault}`);
        }
      }
    }
  }
  const whole = counts.whole - before.whole;
  const rounds = counts.rounds - before.rounds;
  console.log(
    `${instrument.id.padEnd(24)}${instrument.tunings.length} tunings, ${whole} of ${rounds} rounds whole`,
  );
}

const seconds = ((performance.now() - begun) / 1000).toFixed(0);
console.log(
  `\n${counts.rounds} rounds of seven in ${seconds} s: ${counts.whole} whole, ${counts.partly} in part, ${counts.refused} refused with a reason; ${counts.modes} modes fingered`,
);
for (const [reason, count] of [...reasons].toSorted(([, a], [, b]) => b - a))
  console.log(`  ${count} times: ${reason}`);
console.log(`${counts.unsound} unsound`);
process.exitCode = counts.unsound === 0 ? 0 : 1;
