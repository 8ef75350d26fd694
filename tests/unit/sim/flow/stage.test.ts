import { describe, expect, test } from 'vitest';
import { failed, type Outcome, ok, SimError } from '../../../../sim/flow/outcome.ts';
import { createList, createStage, part } from '../../../../sim/flow/stage.ts';

const TOO_HEAVY = { code: 'test/too-heavy', path: 'wood', message: 'the wood is too heavy' };

/** A stage that counts how often it had to work. */
function countingStage<Value>(run: (a: number, b: number) => Value, sharing: 'shared' | 'whole' = 'shared') {
  let runs = 0;
  const stage = createStage(
    ['hull', 'wood'],
    (a: number, b: number) => {
      runs++;
      return run(a, b);
    },
    sharing,
  );
  return { stage, runs: () => runs };
}

describe('a stage', () => {
  test('asked again for the same, gives the very same outcome without working', () => {
    const { stage, runs } = countingStage((a, b) => ({ sum: a + b }));
    const first = stage(ok(1), ok(2));
    expect(first).toStrictEqual(ok({ sum: 3 }));
    expect(stage(ok(1), ok(2))).toBe(first);
    expect(runs()).toBe(1);
  });

  test('works anew when one input is another', () => {
    const { stage, runs } = countingStage((a, b) => ({ sum: a + b }));
    stage(ok(1), ok(2));
    expect(stage(ok(1), ok(3))).toStrictEqual(ok({ sum: 4 }));
    expect(stage(ok(2), ok(3))).toStrictEqual(ok({ sum: 5 }));
    expect(runs()).toBe(3);
  });

  test('remembers one call only', () => {
    const { stage, runs } = countingStage((a, b) => a + b);
    stage(ok(1), ok(2));
    stage(ok(5), ok(5));
    expect(stage(ok(1), ok(2))).toStrictEqual(ok(3));
    expect(runs()).toBe(3);
  });

  test('that comes to an equal answer hands on the old one, and stops the change there', () => {
    const { stage, runs } = countingStage((a, b) => ({ larger: [Math.max(a, b)] }));
    const first = stage(ok(1), ok(7));
    expect(stage(ok(2), ok(7))).toBe(first);
    expect(runs()).toBe(2);
  });

  test('keeps those parts of its answer that came out equal', () => {
    const { stage } = countingStage((a, b) => ({ a: [a], b: [b] }));
    const first = stage(ok(1), ok(2)) as { readonly value: { readonly a: object; readonly b: object } };
    const second = stage(ok(1), ok(3)) as typeof first;
    expect(second.value.a).toBe(first.value.a);
    expect(second.value.b).not.toBe(first.value.b);
  });

  test('of large arrays compares nothing', () => {
    const { stage } = countingStage((a, b) => ({ list: [Math.max(a, b)] }), 'whole');
    const first = stage(ok(1), ok(7));
    const second = stage(ok(2), ok(7));
    expect(second).toStrictEqual(first);
    expect(second).not.toBe(first);
    expect(stage(ok(2), ok(7))).toBe(second);
  });
});

describe('a stage whose input is not there', () => {
  test('does not work, and names what it waits for', () => {
    const { stage, runs } = countingStage((a, b) => a + b);
    expect(stage(failed([TOO_HEAVY]), ok(2))).toStrictEqual({ status: 'blocked', by: ['hull'] });
    expect(stage(ok(1), { status: 'blocked', by: ['design'] })).toStrictEqual({ status: 'blocked', by: ['wood'] });
    expect(stage(failed([TOO_HEAVY]), failed([TOO_HEAVY]))).toStrictEqual({ status: 'blocked', by: ['hull', 'wood'] });
    expect(runs()).toBe(0);
  });

  test('names an input once, however many parts of it are missing', () => {
    const stage = createStage(['design', 'hull', 'design'], (a: number, b: number, c: number) => a + b + c);
    const none: Outcome<number> = { status: 'blocked', by: ['x'] };
    expect(stage(none, ok(1), none)).toStrictEqual({ status: 'blocked', by: ['design'] });
  });

  test('stays blocked with one and the same outcome', () => {
    const { stage } = countingStage((a, b) => a + b);
    const blocked = stage(failed([TOO_HEAVY]), ok(2));
    expect(stage(failed([]), ok(3))).toBe(blocked);
  });

  test('never passes an older answer on, and has its old value back when the input is back', () => {
    const { stage } = countingStage((a, b) => ({ sum: a + b }));
    const first = stage(ok(1), ok(2));
    expect(stage(failed([TOO_HEAVY]), ok(2)).status).toBe('blocked');
    const again = stage(ok(1), ok(2));
    expect(again).toStrictEqual(first);
    expect(again.status === 'ok' && first.status === 'ok' && again.value === first.value).toBe(true);
  });
});

describe('a stage that cannot be done', () => {
  test('fails with the issues, and remembers that too', () => {
    const { stage, runs } = countingStage((a, b) => {
      if (b > 5) throw new SimError([TOO_HEAVY]);
      return a + b;
    });
    const first = stage(ok(1), ok(6));
    expect(first).toStrictEqual(failed([TOO_HEAVY]));
    expect(stage(ok(1), ok(6))).toBe(first);
    expect(runs()).toBe(1);
    expect(stage(ok(1), ok(7))).toBe(first);
    expect(stage(ok(1), ok(5))).toStrictEqual(ok(6));
  });

  test('lets a bug through, every time it is asked, and never gives an older answer instead', () => {
    const { stage } = countingStage((a, b) => {
      if (b > 5) throw new RangeError('a bug');
      return a + b;
    });
    stage(ok(1), ok(2));
    expect(() => stage(ok(1), ok(6))).toThrow(RangeError);
    expect(() => stage(ok(1), ok(6))).toThrow(RangeError);
    expect(stage(ok(1), ok(2))).toStrictEqual(ok(3));
  });
});

describe('part of an answer', () => {
  test('is what was picked, or is blocked by the whole', () => {
    const pick = (whole: { readonly joints: number }) => whole.joints;
    expect(part(ok({ joints: 2 }), 'design', pick)).toStrictEqual(ok(2));
    expect(part(failed([TOO_HEAVY]), 'design', pick)).toStrictEqual({ status: 'blocked', by: ['design'] });
    expect(part({ status: 'blocked', by: ['file'] }, 'design', pick)).toStrictEqual({
      status: 'blocked',
      by: ['design'],
    });
  });
});

describe('a list of answers', () => {
  test('is there when every one is, and the very same while they are the same', () => {
    const gather = createList<object>('float');
    const [head, tail] = [{ draft: 1 }, { draft: 2 }];
    const both = gather([ok(head), ok(tail)]);
    expect(both).toStrictEqual(ok([head, tail]));
    expect(gather([ok(head), ok(tail)])).toBe(both);
    expect(gather([ok(head), ok({ draft: 2 })])).not.toBe(both);
  });

  test('of another length or order is another list', () => {
    const gather = createList<number>('float');
    gather([ok(1), ok(2)]);
    expect(gather([ok(1)])).toStrictEqual(ok([1]));
    expect(gather([ok(2), ok(1)])).toStrictEqual(ok([2, 1]));
  });

  test('with one missing is blocked, never shorter', () => {
    const gather = createList<number>('float');
    gather([ok(1), ok(2)]);
    expect(gather([ok(1), failed([TOO_HEAVY])])).toStrictEqual({ status: 'blocked', by: ['float'] });
    expect(gather([ok(1), ok(2)])).toStrictEqual(ok([1, 2]));
  });

  test('of nothing is blocked, not empty', () => {
    expect(createList<number>('float')([])).toStrictEqual({ status: 'blocked', by: ['float'] });
  });
});
