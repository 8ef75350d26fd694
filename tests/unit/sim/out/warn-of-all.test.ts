import { describe, expect, test } from 'vitest';
import type { OtherRest } from '../../../../sim/hydro/attitudes.ts';
import { type AllWarningParts, warnOfAll } from '../../../../sim/out/warn-of-all.ts';
import {
  makeAccuracy,
  makeAttitudes,
  makeFloat,
  makeFolded,
  makeJointed,
  makeReach,
} from '../../../support/make-checked-bait.ts';
import { quietWarnParts } from '../../../support/quiet-warn-parts.ts';

const QUIET = { float: makeFloat(), accuracy: makeAccuracy(), attitudes: makeAttitudes() };
const CLOSE = { ...QUIET, accuracy: makeAccuracy({ film: { ...makeAccuracy().film, force: 2, tooClose: true } }) };
/** Nothing of these baits is cured: there is nothing to be tried. */
const refloat = () => {
  throw new Error('nothing is floated again');
};
const OVER: OtherRest = {
  float: makeFloat({ heel: -1.2, up: [0, 0.93, 0.36] }),
  ...{ hump: 30.3, back: 4.2, over: [0, 1, 0], share: 0.2, mirrorOf: null },
};

function said(changes: Partial<AllWarningParts>): readonly (readonly [string, string, string])[] {
  const links = ['head', 'tail'].map((name) => ({ name, ...QUIET }));
  return warnOfAll({
    ...{ parts: quietWarnParts(), refloat, reach: makeReach(), jointed: makeJointed(), folded: makeFolded() },
    ...{ whole: QUIET, links, ...changes },
  }).map((one) => [one.code, one.where, one.text]);
}

const MISSED = quietWarnParts({
  target: {
    ...quietWarnParts().target,
    checks: [{ what: 'proud', wanted: 3, got: 9.42, tolerance: 1, met: false }],
    met: false,
  },
});

test('a bait that comes back from anywhere and has grams in reserve gets no more warnings than it had', () => {
  expect(said({})).toEqual([]);
  expect(said({ parts: MISSED })).toEqual([
    ['target-missed', 'the whole bait', 'Wanted 3.0 mm proud; it comes to 9.4 mm proud.'],
  ]);
});

test('what it had is said again with the decimals that are meant', () => {
  const whole = { ...QUIET, accuracy: makeAccuracy({ digits: { draft: 0, proud: 0, trim: 0, heel: 0, gm: 0 } }) };
  expect(said({ parts: MISSED, whole })[0][2]).toBe('Wanted 3.0 mm proud; it comes to 9 mm proud.');
});

describe('the film', () => {
  test('of the whole bait comes first, with both weights and the cure', () => {
    const [film, missed] = said({ whole: CLOSE, parts: MISSED });
    expect(film.slice(0, 2)).toEqual(['film', 'the whole bait']);
    expect(film[2]).toMatch(/is 1\.50 g from hanging.*can hold 2\.00 g\. Push it under, wet its back/);
    expect(missed[0]).toBe('target-missed');
  });

  test('has what is left to hanging for its number, and its own pull for its limit', () => {
    const alone = { jointed: null, folded: null, whole: CLOSE, links: [] };
    const [film] = warnOfAll({ parts: quietWarnParts(), refloat, reach: makeReach(), ...alone });
    expect(film).toMatchObject({ at: null, number: 1.5, limit: 2, unit: 'g', fix: null });
  });

  test('of a bait in balance is never told as nothing', () => {
    const balanced = { ...CLOSE, float: makeFloat({ netWet: -0.003 }) };
    expect(said({ whole: balanced })[0][2]).toContain('is less than 0.01 g from hanging');
    expect(said({ links: ['head', 'tail'].map((name) => ({ name, ...balanced })) })[0][2]).toContain(
      'head less than 0.01 g of 2.00 g',
    );
  });

  test('of links alone is said once for all of them', () => {
    const links = ['head', 'tail'].map((name) => ({ name, ...CLOSE }));
    expect(said({ links }).map(([code, where]) => [code, where])).toEqual([['film', 'head, tail']]);
  });
});

describe('another way to rest', () => {
  test('is told with what it takes to get there, against lifting the whole bait', () => {
    const [[code, where, text]] = said({ whole: { ...QUIET, attitudes: makeAttitudes([OVER]) } });
    expect([code, where]).toEqual(['other-rest', 'the whole bait']);
    // 30.3 g mm on 20.2 g
    expect(text).toBe(
      'Likely: in 20 % ± 3 % of drops the whole bait comes to rest over to port by 68.8°; it takes 30 g mm to get there (as lifting it 1.5 mm: a wave or a tug does it) and 4.2 g mm to get back.',
    );
  });

  test('that few drops end at is what comes of being turned over', () => {
    const [[, , text]] = said({ whole: { ...QUIET, attitudes: makeAttitudes([{ ...OVER, share: 0.05 }]) } });
    expect(text).toMatch(
      /^Once over, the whole bait may stay over to port by 68\.8°: .*; in 5\.0 % ± 1\.7 % of drops it ends there\.$/,
    );
  });

  test('has the lift that the way there is worth for its number, and that of a ripple for its limit', () => {
    const attitudes = makeAttitudes([OVER]);
    const rest = { reach: makeReach(), jointed: null, folded: null, links: [] };
    const [one] = warnOfAll({ parts: quietWarnParts(), refloat, whole: { ...QUIET, attitudes }, ...rest });
    expect(one).toMatchObject({ number: 1.5, limit: 1, unit: 'mm', fix: null });
  });

  test('that is but the other side of a bait that lays over is left to its verdict', () => {
    const attitudes = makeAttitudes([{ ...OVER, mirrorOf: 0 }]);
    expect(said({ whole: { ...QUIET, attitudes, float: makeFloat({ mirrored: true }) } })).toEqual([]);
  });

  test('of the only link is said once, as of the whole bait', () => {
    const both = { ...QUIET, attitudes: makeAttitudes([OVER]) };
    expect(said({ whole: both, links: [{ name: 'body', ...both }] })).toHaveLength(1);
  });
});
