import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { curlWith } from '../../../../sim/ballast/curl.ts';
import { settlePlan } from '../../../../sim/ballast/settle.ts';
import { mostHeel } from '../../../../sim/chain/assemble.ts';
import { ballastPartsOf } from '../../../support/planned-bait.ts';
import { answersOf } from '../../../support/worked-bait.ts';

test('a bait whose pin bears what its tail cannot curls with its own holes as the recipe has it', () => {
  const file = JSON.parse(readFileSync('presets/tin-whistle-90.json', 'utf8'));
  const answers = answersOf(file);
  const { bait } = answers;
  const parts = ballastPartsOf(answers);
  const settled = settlePlan({
    ...{ ...parts, holes: bait.setup.holes, target: bait.setup.target, linkTargets: bait.setup.linkTargets },
    ...{ length: bait.design.body.length, timed: null },
  });
  const curl = curlWith(parts, settled, bait.design.joints, bait.reach);
  const { loose } = bait.jointed ?? {};
  if (!loose || !curl) throw new Error('the demo bait curls');
  expect(curl.yaw).toBeCloseTo(loose.joints[0].yaw, 6);
  expect(curl.heel).toBeCloseTo(mostHeel(loose), 6);
  expect(Math.abs(curl.heel)).toBeGreaterThan(0.1);
});
