import { slotVolume } from '../../mesh/wetted.ts';
import { formatMass } from '../../units/format.ts';
import { type Warning, WORDS_ALONE } from '../../warnings.ts';
import type { WarnParts } from './parts.ts';

/** Less air than this cannot be weighed on a kitchen scale. */
const AIR_G = 0.1;

export function airWarnings({ water, links, wetted }: WarnParts): readonly Warning[] {
  const held = wetted.reduce((sum, link) => sum + slotVolume(link), 0) * water.density;
  if (held < AIR_G) return [];
  const where = links.length > 1 ? 'the joints' : 'the slots';
  const text = `Air caught in slots can hold up ${formatMass(held)}: shake the bait under water before you judge it.`;
  return [{ ...WORDS_ALONE, code: 'air-in-slots', where, text, ...{ number: held, limit: AIR_G, unit: 'g' } }];
}

/** What hair holds under water no maker knows: the float takes the middle. number: how far off that may be. */
export function tailWarnings({ water, hardware, assembled }: WarnParts): readonly Warning[] {
  return hardware.fittings
    .filter(({ outsideSpread }) => outsideSpread * water.density >= AIR_G / 2)
    .map(({ name, at, outsideSpread }) => {
      const spread = outsideSpread * water.density;
      const net = (weight: number) => formatMass(weight, 'g', { digits: 2, signed: true });
      const text = `Air in "${name}" is taken at its middle; net weight under water is ${net(assembled.netWet - spread)} with the most of it, ${net(assembled.netWet + spread)} with the least.`;
      return { code: 'air-in-tail', where: name, text, at, number: spread, limit: AIR_G / 2, unit: 'g', fix: null };
    });
}
