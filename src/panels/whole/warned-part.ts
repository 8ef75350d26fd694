import type { AdvisedBaitAnswers, Hardware } from '../../../sim/index.ts';

type Warning = AdvisedBaitAnswers['warnings'][number];

/** The part that a warning is about, as the view picks it: `hole:NAME`; null where there is none to pick. */
export function warnedPart(
  { code, where }: Pick<Warning, 'code' | 'where'>,
  { holes, hung, eyes }: Pick<Hardware, 'holes' | 'hung' | 'eyes'>,
): string | null {
  const found = (kind: string, item: { readonly name: string } | undefined) => (item ? `${kind}:${item.name}` : null);
  switch (code) {
    case 'wall-thin':
      return found(
        'hole',
        holes.find(({ name }) => name === where),
      );
    // of two the first
    case 'hooks-meet':
      return found(
        'hung',
        hung.find(({ name }) => where.startsWith(`${name}, `)),
      );
    case 'hook-at-joint':
      return found(
        'hung',
        hung.find(({ name }) => name === where),
      );
    case 'embedment-short':
      return found(
        'hanger',
        eyes.find(({ kind, name }) => kind === 'hanger' && name === where),
      );
    default:
      return null;
  }
}
