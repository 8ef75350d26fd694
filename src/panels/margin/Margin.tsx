import { memo, useDeferredValue } from 'react';
import { type Design, type DesignFile, withValueAt } from '../../../sim/index.ts';
import { chooseSetup, makeEdit } from '../../document/commands.ts';
import { presets } from '../../document/presets.ts';
import { useDocument } from '../../document/store.ts';
import { type Answers, useAnswers } from '../../engine/answers.ts';
import { issuesByField, issuesOf } from '../../engine/issues.ts';
import { Choice } from '../../ui/Choice.tsx';
import { OneOf } from '../../ui/OneOf.tsx';
import { showBeside, showUnits, useView } from '../../view/view.ts';
import { Folds } from './Folds.tsx';
import type { Field } from './field.ts';
import { bodyFields, hookFields, jointFields, slugField, waterFields, woodField } from './fields.ts';
import { History } from './History.tsx';
import { MeasureField } from './MeasureField.tsx';
import {
  bareHangerFolds,
  bodyFolds,
  coatFolds,
  type Fold,
  fittedFolds,
  holeFolds,
  hookFolds,
  jointFolds,
  shopFolds,
  targetFields,
  wallFields,
  woodFolds,
} from './more-fields.ts';
import { usePicked } from './picked.ts';
import { Shop } from './Shop.tsx';
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
      {file !== null && file.setups.length > 1 && <Beside file={file} setup={setup} />}
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

/** No setup has this name: one that is left empty is refused. */
const NONE = '';

/** Which other setup is drawn pale in the same water. */
function Beside({ file, setup }: { readonly file: DesignFile; readonly setup: string | null }) {
  const beside = useView((view) => view.beside);
  const others = file.setups.filter(({ name }) => name !== setup);
  return (
    <Choice
      label="Beside"
      options={[{ key: NONE, text: 'none' }, ...others.map(({ name }) => ({ key: name, text: name }))]}
      chosen={beside ?? NONE}
      onChoose={(name) => showBeside(name === NONE ? null : name)}
    />
  );
}

interface InputsProps {
  readonly file: DesignFile;
  readonly setup: string | null;
}

/** The numbers as typed change at once; what follows from them, here, once picture and float stand. */
function Inputs(given: InputsProps) {
  return <DrawnInputs {...given} answers={useDeferredValue(useAnswers((held) => held))} />;
}

const DrawnInputs = memo(({ file, setup, answers }: InputsProps & { readonly answers: Answers }) => {
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
  const target = targetFields(file, design, at);
  const wall = wallFields(file, design);
  const folds = {
    body: bodyFolds(file, design),
    joints: file.joints.map((_, joint) => jointFolds(file, design, joint)),
    wood: woodFolds(file, design),
    coats: coatFolds(file, design, at),
    fitted: fittedFolds(file, design),
    hook: hookFolds(file, design, at, hook),
    hangers: bareHangerFolds(file, design, at),
    hole: holeFolds(file, design, at, hole),
    drills: shopFolds(file, design, 'drills'),
    stock: shopFolds(file, design, 'lead'),
  };
  const open = [
    ...body,
    ...joints.flat(),
    wood,
    ...hookNumbers,
    ...(lead === null ? [] : [lead]),
    ...water,
    ...target,
    ...wall,
  ];
  const all = [
    ...open,
    ...Object.values(folds)
      .flat(2)
      .flatMap(({ fields }) => fields),
  ];
  // issues of a run for an older design would stand beside numbers that have changed since
  const found = answers.fresh ? issuesOf(answers) : [];
  const issues = issuesByField(found, all);
  const numbers = (fields: readonly Field[]) =>
    fields.map((field) => <MeasureField key={field.paths.at(-1)} field={field} issue={issues.get(field)} />);

  const folded = (some: readonly Fold[]) => <Folds folds={some} issues={issues} numbers={numbers} />;

  return (
    <>
      <Group title="Body">
        {numbers(body)}
        {folded(folds.body)}
      </Group>
      {joints.map((fields, joint) => (
        <Group key={fields.at(0)?.paths.at(-1)} title={jointTitle(file, joint)}>
          {numbers(fields)}
          {folded(folds.joints[joint] ?? [])}
        </Group>
      ))}
      <Group title={file.wood.species === undefined ? 'Wood' : `Wood: ${file.wood.species}`}>
        {numbers([wood])}
        {folded(folds.wood)}
      </Group>
      {folds.coats.length > 0 && <Group title="Coats">{folded(folds.coats)}</Group>}
      {folds.fitted.length > 0 && <Group title="Fins and fittings">{folded(folds.fitted)}</Group>}
      <Group title="Hook and hanger">
        {hooks.length === 0 ? (
          <p>Nothing hangs in this setup.</p>
        ) : (
          <>
            <Choice label="Hook" options={asOptions(hooks)} chosen={hooks[hook] ?? null} onChoose={pickHook} />
            {numbers(hookNumbers)}
            {folded(folds.hook)}
          </>
        )}
        {folded(folds.hangers)}
      </Group>
      <Group title="Ballast">
        {holes.length === 0 ? (
          <p>No holes in this setup.</p>
        ) : (
          <>
            <Choice label="Hole" options={asOptions(holes)} chosen={holes[hole] ?? null} onChoose={pickHole} />
            {lead === null ? <p>This hole holds no lead.</p> : numbers([lead])}
            {lead !== null && <Stock file={file} setup={at} hole={hole} />}
            {folded(folds.hole)}
          </>
        )}
      </Group>
      <Group title="Target">{numbers(target)}</Group>
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
      <Group title="Shop">
        {numbers(wall)}
        <Shop
          file={file}
          design={design}
          drills={folds.drills}
          lead={folds.stock}
          found={found}
          issues={issues}
          numbers={numbers}
        />
      </Group>
    </>
  );
});

/** What the lead of a hole is cut from or poured of. */
function Stock({ file, setup, hole }: { readonly file: DesignFile; readonly setup: number; readonly hole: number }) {
  const path = `setups.${setup}.holes.${hole}`;
  const drilled = file.setups[setup]?.holes[hole];
  return (
    <Choice
      label="Stock"
      options={asOptions((file.shop?.lead ?? []).map(({ name }) => name))}
      chosen={drilled?.lead?.of ?? null}
      onChoose={(of) => makeEdit(`stock in ${drilled?.name}`, (design) => withValueAt(design, `${path}.lead.of`, of))}
    />
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
