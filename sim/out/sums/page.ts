import { formatNumber } from '../../units/format.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';
import { countSums, ledgerSums, reserveSums } from './balance.ts';
import { ballastSums } from './ballast.ts';
import type { Block } from './block.ts';
import { floatingSums } from './floating.ts';
import { partSums } from './parts.ts';
import { linkPiece, type Piece, wholePiece } from './piece.ts';
import { printBlocks } from './print.ts';
import { waterSums } from './water.ts';

/**
 * The sums behind the ledger and the float as a page to check with a pocket calculator: each link, or the one named,
 * then the whole bait. link: a name the bait has; null for all. The printed numbers give the printed results.
 */
export async function sumsPage(bait: CheckedBait, link: string | null): Promise<string> {
  // with a parser inside: fetched when a page is wanted, and not before
  const { render } = await import('../../equations/render.ts');
  return `${printBlocks(sumsBlocks(bait, link), render).join('\n')}\n`;
}

/** What the page says, before it is written out. */
export function sumsBlocks(bait: CheckedBait, link: string | null): readonly Block[] {
  const water = waterSums(bait.water);
  const single = bait.links.length === 1;
  const shown = bait.links.filter(({ spec }) => link === null || spec.name === link);
  return [
    ...opening(bait),
    topic('Water'),
    ...water.blocks,
    ...shown.flatMap((each) => linkBlocks(bait, each, linkPiece(bait, each, water.density))),
    ...(single ? [] : wholeBlocks(wholePiece(bait, water.density))),
  ];
}

function opening(bait: CheckedBait): readonly Block[] {
  return [
    heading(`The sums behind ${bait.design.name}: ${bait.setup.name}`),
    words(
      'For a pocket calculator set to degrees: the numbers printed give the result printed, to its last digit. Millimetres, grams, degrees; 1 cm³ is 1000 mm³ and 1 g/cm³ is 0.001 g/mm³. Places are from the nose tip: x aft, y to starboard, z up. A formula is explained where it first stands. Numbers that are measured on the drawn body are exact for it; your wood is not, so weigh what you can.',
    ),
  ];
}

function linkBlocks(bait: CheckedBait, link: CheckedLink, piece: Piece): readonly Block[] {
  const { index, name, span } = link.spec;
  const [from, to] = span.map((x) => formatNumber(x));
  const title =
    bait.links.length === 1
      ? `The bait, in one piece: ${name}`
      : `Link ${index + 1} of ${bait.links.length}, alone: ${name} (${from} to ${to} mm)`;
  return [
    heading(title),
    topic('What each part weighs'),
    ...partSums(bait, link, piece),
    ...restOf(piece, [topic('What each part counts for in water'), ...countSums(bait, link, piece)]),
  ];
}

function wholeBlocks(piece: Piece): readonly Block[] {
  return [heading('The whole bait, held straight'), ...restOf(piece, [])];
}

/** What links and baits share, with what only a link has between. */
function restOf(piece: Piece, counts: readonly Block[]): readonly Block[] {
  const weight = ledgerSums(piece);
  return [
    topic('All that weighs, and where'),
    ...weight.blocks,
    ...counts,
    ...(counts.length === 0 ? [topic('Reserve')] : []),
    ...reserveSums(piece, weight.mass),
    topic(piece.float.offset === null ? 'How it lies under water' : 'How it floats'),
    ...floatingSums(piece, weight),
    topic('Ballast for its target'),
    ...ballastSums(piece, weight),
  ];
}

function heading(text: string): Block {
  return { kind: 'heading', text };
}

function topic(text: string): Block {
  return { kind: 'topic', text };
}

function words(text: string): Block {
  return { kind: 'words', text };
}
