import { type LastGood, useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView, type View } from '../../view/view.ts';
import { isThin } from '../../view/walls.ts';

/** Says what keep-outs and wanted walls look like; as marks they are in saved pictures too. */
export function KeepOutNote() {
  const asked = useView((view) => view.keepOuts);
  const shown = useView((view) => view.shown);
  const thin = useAnswers(({ lastGood }) => hasThinWall(lastGood, shown));
  const wall = useAnswers(({ lastGood }) => lastGood.bait.design?.shop.wall);
  const amounts = useAmounts();
  if (!asked || wall === undefined) return null;
  return (
    <div className="keep-out-note" role="status">
      <p className="mark">
        <svg viewBox="-9 -6 18 12" aria-hidden="true">
          <path d="M-8 -5H8V5H-8Z" />
          <path d="M-8 0L-3 -5M-8 5L2 -5M-3 5L7 -5M2 5L8 -1" />
        </svg>
        <span>no lead here: shanks, bores, slots, tabs</span>
      </p>
      <p className="mark">
        <svg viewBox="-9 -6 18 12" aria-hidden="true">
          <path d="M-4 -5H4A4 4 0 0 1 8 -1V1A4 4 0 0 1 4 5H-4A4 4 0 0 1 -8 1V-1A4 4 0 0 1 -4 -5Z" className="shell" />
          <path d="M-4 -2H4V2H-4Z" className="slug" />
        </svg>
        <span>{`wall wanted round lead: ${amounts.length(wall)}`}</span>
      </p>
      {thin && (
        <p className="mark">
          <svg viewBox="-9 -6 18 12" aria-hidden="true" className="thin">
            <path d="M-8 0L-3 -5M-8 5L2 -5M-3 5L7 -5M2 5L8 -1" />
          </svg>
          <span>too thin</span>
        </p>
      )}
    </div>
  );
}

/** Whether lead that is shown has less wood round it than is wanted. */
function hasThinWall({ bait: { design, hardware, walls } }: LastGood, shown: View['shown']): boolean {
  if (design === undefined) return false;
  const thickness = (i: number) => walls?.holes[i]?.thickness ?? Number.POSITIVE_INFINITY;
  const holes = hardware?.holes ?? [];
  return holes.some(
    ({ lead, link }, i) =>
      lead !== null && (shown === 'whole' || link === shown) && isThin(thickness(i), design.shop.wall),
  );
}
