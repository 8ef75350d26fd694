import type { Issue } from '../flow/outcome.ts';
import { SimError } from '../flow/outcome.ts';
import type { WorkedFile } from './work-out.ts';

/*
 * Parts of the file that this version reads, keeps and writes, but cannot float. Refused one by one: a bait floated
 * without its fins would be a wrong answer that looks like a right one.
 */

const WHY = {
  knuckle: 'knuckle faces are not built yet; this version floats flat and bevelled faces',
  linkedEyes: 'linked eyes are not built yet; this version hinges on a pin',
  fittings: 'fittings are not built yet; this version floats without them',
  fins: 'fins are not built yet; this version floats without them',
  sinkSpeed: 'targets by sinking speed are not built yet; this version takes net_wet_g, the weight under water',
} as const;

type Part = keyof typeof WHY;

/** Every part of the design that this version cannot float. */
export function notBuiltIssues(file: WorkedFile): readonly Issue[] {
  const { joints, setups } = file;
  return [
    ...joints.flatMap(({ faces, hinge }, index) => [
      ...refuseIf(faces.kind === 'knuckle', 'knuckle', `joints.${index}.faces.kind`),
      ...refuseIf(hinge.kind === 'linked-eyes', 'linkedEyes', `joints.${index}.hinge.kind`),
    ]),
    ...refuseIf((file.fittings ?? []).length > 0, 'fittings', 'fittings'),
    ...refuseIf((file.fins ?? []).length > 0, 'fins', 'fins'),
    ...setups.flatMap(({ target, link_targets: targets = {} }, index) => [
      ...refuseIf('sink_mm_s' in target, 'sinkSpeed', `setups.${index}.target.sink_mm_s`),
      ...Object.entries(targets).flatMap(([link, one]) =>
        refuseIf('sink_mm_s' in one, 'sinkSpeed', `setups.${index}.link_targets.${link}.sink_mm_s`),
      ),
    ]),
  ];
}

/** The refusal of one such part, for code that meets it where it takes a built one. */
export function notBuilt(part: Part, path = ''): SimError {
  return new SimError([issueOf(part, path)]);
}

function refuseIf(isThere: boolean, part: Part, path: string): readonly Issue[] {
  return isThere ? [issueOf(part, path)] : [];
}

function issueOf(part: Part, path: string): Issue {
  return { code: 'design/not-built-yet', path, message: WHY[part] };
}
