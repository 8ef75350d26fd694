import { fillDrawnMesh, makeDrawnMesh } from '../../src/scene/drawn-mesh.ts';
import type { AllAnswers } from '../support/worked-bait.ts';
import { meshAt, SIZES } from './demo.ts';
import { type Row, timeRow, valueRow } from './rows.ts';
import { timeInTurn } from './timing.ts';

/** A link's buffers for the picture: rewritten in place, as an edit does, and made anew by a plain rebuild. */
export function drawingRows(answers: AllAnswers): readonly Row[] {
  return SIZES.slice(0, 2).flatMap((size) => {
    const mesh = meshAt(answers, 0, size);
    const kept = makeDrawnMesh(mesh.topology);
    const [inPlace, anew] = timeInTurn([
      () => fillDrawnMesh(kept, mesh),
      // a topology that was never seen before
      () => fillDrawnMesh(makeDrawnMesh({ ...mesh.topology }), mesh),
    ]);
    return [
      timeRow(`${size.name}: buffers rewritten in place`, inPlace, 'ms', null),
      timeRow(`${size.name}: buffers made anew`, anew, 'ms', null),
      valueRow(`${size.name}: made anew over in place`, anew.least / inPlace.least, '×', null),
    ];
  });
}
