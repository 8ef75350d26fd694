import type { Ledger } from '../mass/ledger.ts';
import type { PlacedHung } from '../mass/placed.ts';
import { add, scale, type Vec3 } from '../numerics/vec3.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import type { FloatingBody } from './body.ts';
import type { LinkTrees } from './link-tree.ts';

/** One link alone, or all of them held straight as one rigid piece. Trees and ledgers in the same order. */
export function bodyOf(
  trees: readonly LinkTrees[],
  ledgers: readonly Ledger[],
  hung: readonly PlacedHung[],
  water: WaterAnswer,
): FloatingBody {
  const mass = ledgers.reduce((sum, ledger) => sum + ledger.mass, 0);
  const moment = ledgers.reduce<Vec3>((sum, ledger) => add(sum, scale(ledger.centre, ledger.mass)), [0, 0, 0]);
  return {
    trees: trees.map(({ skin }) => skin),
    fins: trees.flatMap(({ fins }) => fins),
    waterDensity: water.density,
    mass,
    centre: scale(moment, 1 / mass),
    outside: ledgers.flatMap((ledger) =>
      ledger.lines.flatMap((line) =>
        line.outsideVolume > 0 ? [{ volume: line.outsideVolume, at: line.outsideAt }] : [],
      ),
    ),
    hung,
  };
}
