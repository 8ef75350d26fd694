import type { AdvisedBaitAnswers, Hardware } from '../../../sim/index.ts';

type Warning = AdvisedBaitAnswers['warnings'][number];

/** The part that a warning is about, as the view picks it: `hole:NAME`; null where there is none to pick. */
export function warnedPart(
  { code, where }: Pick<Warning, 'code' | 'where'>,
  { holes, hung, eyes }: Pick<Hardware, 'holes' | 'hung' | 'eyes'>,
): string | null {
  switch (code) {
    case 'wall-thin':
      return found(
        'hole',
        holes.find(({ name }) => name === where),
      );
    // of several the first
    case 'hooks-meet':
      return found('hung', firstNamed(where, hung));
    case 'hook-at-joint':
      return found(
        'hung',
        hung.find(({ name }) => name === where),
      );
    case 'embedment-short':
      return found(
        'hanger',
        firstNamed(
          where,
          eyes.filter(({ kind }) => kind === 'hanger'),
        ),
      );
    default:
      return null;
  }
}

function found(kind: string, item: { readonly name: string } | undefined): string | null {
  return item ? `${kind}:${item.name}` : null;
}

/** The one that a list joined with `, ` begins with: names have commas too, so the longest that fits. */
function firstNamed<Item extends { readonly name: string }>(where: string, items: readonly Item[]): Item | undefined {
  const [longest] = items
    .filter(({ name }) => `${where}, `.startsWith(`${name}, `))
    .toSorted((a, b) => b.name.length - a.name.length);
  return longest;
}
