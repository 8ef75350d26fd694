import { all, create, unit as unitOf } from 'mathjs';
import type { SymbolUnit } from '../../sim/equations/equation.ts';
import type { Amount, Case } from '../../sim/equations/worked.ts';
import { createPipeline, type DesignFile, type Step } from '../../sim/index.ts';
import type { CheckedBait } from '../../sim/out/checked-bait.ts';
import { sumsBlocks } from '../../sim/out/sums/page.ts';
import { collectAnswers } from '../../src/cli/work-out.ts';

const mathjs = create(all);

/** All answers about a design that can be made; no sum reads the advice, which takes longest. */
export function checkedBaitOf(file: DesignFile, setup: string | null = null): CheckedBait {
  return collectAnswers(answersWithoutAdvice(file, setup), 'test');
}

function* answersWithoutAdvice(file: DesignFile, setup: string | null): Generator<Step> {
  yield* createPipeline().steps(file, { setup, detail: 'full' });
  for (const link of file.links.keys()) yield { name: 'cures', link, outcome: { status: 'ok', value: [] } };
  yield { name: 'whatIfs', link: null, outcome: { status: 'ok', value: [] } };
}

/** Every equation on a bait's page with its numbers, unrounded. */
export function casesOf(bait: CheckedBait): readonly Case[] {
  return sumsBlocks(bait, null).flatMap((block) => ('cases' in block ? block.cases : []));
}

/**
 * What a formula gives when mathjs works it out with units, in the unit the equation claims. Throws when the units do
 * not go together or come out as others.
 */
export function withUnits(
  formula: string,
  values: Readonly<Record<string, Amount | readonly Amount[]>>,
  unit: SymbolUnit,
): number {
  const measured = ({ value, unit: own }: Pick<Amount, 'value' | 'unit'>) => (own === '1' ? value : unitOf(value, own));
  const scope = Object.fromEntries(
    Object.entries(values).map(([name, given]) => [name, 'value' in given ? measured(given) : given.map(measured)]),
  );
  const got: unknown = mathjs.evaluate(formula, scope);
  if (typeof got === 'number') {
    if (unit === '1') return got;
    if (unit === 'deg') return (got * 180) / Math.PI;
    throw new Error(`${formula} gives a plain number, ${unit} is claimed`);
  }
  if (!mathjs.isUnit(got) || unit === '1') throw new Error(`${formula} does not give ${unit}`);
  return got.toNumber(unit);
}
