import {
  type AdvisedBaitAnswers,
  type AdvisedLinkAnswers,
  type CheckedBait,
  createAdvisor,
  type Issue,
  type Step,
} from '../../sim/index.ts';
import { Refusal, refusal } from './exit.ts';
import { type GivenDesign, reasonLines } from './read-design.ts';

/** Every answer about a design in one of its setups. Throws Refusal when the design cannot be made as drawn. */
export function workOut(given: GivenDesign, setup: string | null, option = '--setup'): CheckedBait {
  const known = given.file.setups.map((each) => each.name);
  if (setup !== null && !known.includes(setup)) {
    const names = known.map((name) => JSON.stringify(name)).join(', ');
    throw refusal(option, `the design has no setup ${JSON.stringify(setup)}`, `choose one of ${names}`);
  }
  return collectAnswers(createAdvisor().steps(given.file, { setup, detail: 'full' }), given.from);
}

/** Drains the pipeline. A report wants all answers: a single failure refuses the whole, with every reason found. */
export function collectAnswers(steps: Iterable<Step>, from: string): CheckedBait {
  const bait: Partial<AdvisedBaitAnswers> = {};
  const links: Partial<AdvisedLinkAnswers>[] = [];
  const issues: Issue[] = [];
  for (const { name, link, outcome } of steps) {
    if (outcome.status === 'failed') issues.push(...outcome.issues);
    if (outcome.status !== 'ok') continue;
    const place = link === null ? bait : placeOf(links, link);
    Object.assign(place, { [name]: outcome.value });
  }
  if (issues.length > 0) throw new Refusal([...new Set(reasonLines(issues, from))]);
  return {
    design: present(bait.design),
    setup: present(bait.setup),
    water: present(bait.water),
    hardware: present(bait.hardware),
    links: present(bait.links).map((spec, index) => {
      const { solid, wetted, ledger, float, accuracy, attitudes, roll, sinking, cures, forgiveness } =
        links[index] ?? {};
      return {
        spec,
        solid: present(solid),
        wetted: present(wetted),
        ledger: present(ledger),
        float: present(float),
        accuracy: present(accuracy),
        attitudes: present(attitudes),
        roll: present(roll),
        sinking: present(sinking),
        cures: present(cures),
        forgiveness: present(forgiveness),
      };
    }),
    assembled: present(bait.assembled),
    assembledAccuracy: present(bait.assembledAccuracy),
    assembledAttitudes: present(bait.assembledAttitudes),
    assembledRoll: present(bait.assembledRoll),
    drop: present(bait.drop),
    assembledSinking: present(bait.assembledSinking),
    target: present(bait.target),
    warnings: present(bait.allWarnings),
    ballast: present(bait.ballast),
    planned: present(bait.planned),
    reach: present(bait.reach),
    jointed: present(bait.jointed),
    folded: present(bait.folded),
    whatIfs: present(bait.whatIfs),
  };
}

function placeOf(links: Partial<AdvisedLinkAnswers>[], index: number): Partial<AdvisedLinkAnswers> {
  const known = links[index] ?? {};
  links[index] = known;
  return known;
}

/** Without issues every answer is there: anything else is a bug of the pipeline. */
function present<Answer>(answer: Answer | undefined): Answer {
  if (answer === undefined) throw new Error('an answer is missing although nothing failed');
  return answer;
}
