import type { Design, DesignFile } from '../../../sim/index.ts';
import { chooseSetup, makeEdit } from '../../document/commands.ts';
import { presets } from '../../document/presets.ts';
import { useDocument } from '../../document/store.ts';
import { useAnswers } from '../../engine/answers.ts';
import { issuesByField, issuesOf } from '../../engine/issues.ts';
import { Choice } from '../../ui/Choice.tsx';
import { OneOf } from '../../ui/OneOf.tsx';
import { showUnits, useView } from '../../view/view.ts';
import { bodyFields, type Field, hookFields, jointFields, slugField, waterFields, woodField } from './fields.ts';
import { History } from './History.tsx';
import { MeasureField } from './MeasureField.tsx';
import { usePicked } from './picked.ts';
import { changeWater, type WaterChoice, waterChoice } from './water.ts';

/** The inputs beside the drawing: which bait, which setup, which units, and the numbers of the design. */
export function Margin({ onPreset }: { onPreset(key: string): void }) {
  const file = useDocument((document) => document.file);
  const preset = useDocument((document) => document.preset);
  const setup = useDocument((document) => document.setup);
  const units = useView((view) => view.units);
  return (
    <>
      <Choice
        label="Bait"
        options={presets.map(({ key, title }) => ({ key, text: title }))}
        chosen={preset}
        onChoose={onPreset}
      />
      {file !== null && (
        <Choice
          label="Setup"
          options={file.setups.map(({ name }) => ({ key: name, text: name }))}
          chosen={setup}
          onChoose={chooseSetup}
        />
      )}
      <OneOf
        label="Units"
        options={[
          { key: 'mm-g', text: 'mm, g' },
          { key: 'in-oz', text: 'in, oz' },
        ]}
        chosen={units}
        onChoose={showUnits}
      />
      <History />
      {file !== null && <Inputs file={file} setup={setup} />}
    </>
  );
}

const WATERS: readonly { readonly key: WaterChoice; readonly text: string }[] = [
  { key: 'fresh', text: 'Fresh' },
  { key: 'sea', text: 'Sea' },
  { key: 'measured', text: 'Measured' },
];

/** Density in g/cm³ that a measured water starts from where none has been worked out yet. */
const PLAIN_WATER = 1;

function Inputs({ file, setup }: { readonly file: DesignFile; readonly setup: string | null }) {
  const answers = useAnswers((held) => held);
  const design = sameBait(answers.lastGood.bait.design, file);
  const density = answers.lastGood.bait.water?.density;
  const at = Math.max(
    0,
    file.setups.findIndex(({ name }) => name === setup),
  );
  const hooks = file.setups[at]?.hung.map(({ name }) => name) ?? [];
  const holes = file.setups[at]?.holes.map(({ name }) => name) ?? [];
  const [hook, pickHook] = usePicked('hung', hooks);
  const [hole, pickHole] = usePicked('hole', holes);

  const body = bodyFields(file, design);
  const joints = file.joints.map((_, joint) => jointFields(file, design, joint));
  const wood = woodField(file, design);
  const hookNumbers = hookFields(file, design, at, hook);
  const lead = slugField(file, design, at, hole);
  const water = waterFields(file, design, at);
  const all = [...body, ...joints.flat(), wood, ...hookNumbers, ...(lead === null ? [] : [lead]), ...water];
  // issues of a run for an older design would stand beside numbers that have changed since
  const issues = issuesByField(answers.fresh ? issuesOf(answers) : [], all);
  const numbers = (fields: readonly Field[]) =>
    fields.map((field) => <MeasureField key={field.paths.at(-1)} field={field} issue={issues.get(field)} />);

  return (
    <>
      <Group title="Body">{numbers(body)}</Group>
      {joints.map((fields, joint) => (
        <Group key={fields.at(0)?.paths.at(-1)} title={jointTitle(file, joint)}>
          {numbers(fields)}
        </Group>
      ))}
      <Group title={file.wood.species === undefined ? 'Wood' : `Wood: ${file.wood.species}`}>{numbers([wood])}</Group>
      <Group title="Hook and hanger">
        {hooks.length === 0 ? (
          <p>Nothing hangs in this setup.</p>
        ) : (
          <>
            <Choice label="Hook" options={asOptions(hooks)} chosen={hooks[hook] ?? null} onChoose={pickHook} />
            {numbers(hookNumbers)}
          </>
        )}
      </Group>
      <Group title="Ballast">
        {holes.length === 0 ? (
          <p>No holes in this setup.</p>
        ) : (
          <>
            <Choice label="Hole" options={asOptions(holes)} chosen={holes[hole] ?? null} onChoose={pickHole} />
            {lead === null ? <p>This hole holds no lead.</p> : numbers([lead])}
          </>
        )}
      </Group>
      <Group title="Water">
        <OneOf
          label="Kind"
          options={WATERS}
          chosen={waterChoice(file, at)}
          onChoose={(kind) =>
            makeEdit('water', changeWater(at, kind, density === undefined ? PLAIN_WATER : density * 1000))
          }
        />
        {numbers(water)}
      </Group>
    </>
  );
}

function Group({ title, children }: { readonly title: string; readonly children: React.ReactNode }) {
  return (
    <fieldset>
      <legend>{title}</legend>
      {children}
    </fieldset>
  );
}

/** The worked-out design, unless it is still that of the bait before. */
function sameBait(design: Design | undefined, file: DesignFile): Design | undefined {
  return design?.name === file.name && design.joints.length === file.joints.length ? design : undefined;
}

function jointTitle(file: DesignFile, joint: number): string {
  return `Joint ${joint + 1}: ${file.links[joint]?.name ?? ''} to ${file.links[joint + 1]?.name ?? ''}`;
}

function asOptions(names: readonly string[]) {
  return names.map((name) => ({ key: name, text: name }));
}
