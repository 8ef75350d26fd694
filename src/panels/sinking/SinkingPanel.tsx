import { fallWords, restated, type Sinking, speedWords, timeBandWords } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useView } from '../../view/view.ts';
import { WideTable } from '../ballast/WideTable.tsx';
import { dropOf } from './drop.ts';
import { FallCurve } from './FallCurve.tsx';
import { LetSink } from './LetSink.tsx';
import { TimedDrop } from './TimedDrop.tsx';

/** How the bait falls, where its setup sinks: times and speed with their bands, its curve, and a drop to time. */
export function SinkingPanel() {
  const now = useAnswers(({ bait }) => bait.assembledSinking);
  const before = useAnswers(({ lastGood }) => lastGood.bait.assembledSinking);
  const sinking = now?.status === 'ok' ? now.value : before;
  if (!sinking) return null;
  return (
    <section className={now?.status === 'ok' ? 'sinking' : 'sinking old'} aria-labelledby="sinking">
      <h2 id="sinking">Sinking</h2>
      <Falls sinking={sinking} />
    </section>
  );
}

function Falls({ sinking }: { readonly sinking: Sinking }) {
  const design = useAnswers(({ lastGood }) => lastGood.bait.design);
  const name = useAnswers(({ lastGood }) => lastGood.bait.setup?.name);
  const setup = Math.max(0, design?.setups.findIndex((each) => each.name === name) ?? 0);
  const drop = dropOf(design, setup, sinking.netWet);
  return (
    <div className="sinking-body">
      <div className="fall">
        <dl>
          <Numbers label="First foot" value={timeBandWords(sinking.firstFoot)} />
          <Numbers label="First metre" value={timeBandWords(sinking.firstMetre)} />
          <Numbers
            label="Steady speed"
            value={`${speedWords(sinking.speed[1])} (${sinking.speed[0].toFixed(0)}–${sinking.speed[2].toFixed(0)})`}
          />
          <Numbers label="It falls" value={fallWords(sinking).replace(' as it falls', '')} />
        </dl>
        <FallCurve sinking={sinking} drop={drop} />
        <div className="acts">
          <LetSink />
        </div>
        <p className="note">
          From rest, held straight, hooks hung. In brackets the least and the most that it may be: drag of such shapes
          is not known better until a drop is timed. In the tub it sinks in its own time and at the sheet's own scale,
          and comes back.
        </p>
      </div>
      <TimedDrop key={name} setup={setup} sinking={sinking} drop={drop} />
      <LinkFalls />
    </div>
  );
}

function Numbers({ label, value }: { readonly label: string; readonly value: string }) {
  const units = useView((view) => view.units);
  return (
    <div>
      <dt>{label}</dt>
      <dd>{restated(value, units)}</dd>
    </div>
  );
}

/** Each link alone: links that fall alike leave their pins nothing to carry. */
function LinkFalls() {
  const specs = useAnswers(({ lastGood }) => lastGood.bait.links);
  const links = useAnswers(({ lastGood }) => lastGood.links);
  const shares = useAnswers(({ lastGood }) => lastGood.bait.assembledSinking?.shares);
  if (specs === undefined || specs.length < 2) return null;
  return (
    <div className="link-falls">
      <h3>Each link alone</h3>
      <WideTable label="How each link falls alone">
        <thead>
          <tr>
            <th scope="col">Link</th>
            <th scope="col">First foot</th>
            <th scope="col">Steady speed</th>
            <th scope="col">Share of the drag</th>
            <th scope="col" className="word">
              It falls
            </th>
          </tr>
        </thead>
        <tbody>
          {specs.map(({ index, name }) => {
            const sinking = links[index]?.sinking;
            const share = shares?.[index]?.share;
            return (
              <tr key={index}>
                <th scope="row">{name}</th>
                <td>{sinking ? timeBandWords(sinking.firstFoot) : 'does not sink'}</td>
                <td>{sinking ? speedWords(sinking.speed[1]) : ''}</td>
                <td>{share === undefined ? '' : `${(100 * share).toFixed(0)} %`}</td>
                <td className="word">{sinking ? fallWords(sinking).replace(' as it falls', '') : ''}</td>
              </tr>
            );
          })}
        </tbody>
      </WideTable>
    </div>
  );
}
