import { useAnswers } from '../../engine/answers.ts';
import { useView } from '../../view/view.ts';

/** Whether links are seen pulled apart: asked for, and there is more than one to be seen. */
export function useIsApart(): boolean {
  const wanted = useView((view) => view.apart && view.shown === 'whole');
  const links = useAnswers((answers) => answers.lastGood.bait.links?.length ?? 0);
  return wanted && links > 1;
}
