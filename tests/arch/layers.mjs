/**
 * Which file may import which: the picture in DEVELOPERS.md as rules for dependency-cruiser.
 *
 *     app ─► panels ─┐                                 cli ──┐
 *        └─► scene ──┼─► engine, document, view  (ui below)  │
 *                    └──────────────► sim/index ◄────────────┘
 *
 * Each comment says what to do instead. Every rule is broken once in canary/, and layers.test.ts checks that it is
 * noticed there.
 */

/** A folder of sim/ may import those before it, never those after it. */
export const SIM_LAYERS = [
  'tables',
  'design',
  'hull',
  'links',
  'mesh',
  'mass',
  'reach',
  'hydro',
  'chain',
  'sinking',
  'ballast',
  'roll',
  'sheets',
  'out',
];

/** Below all layers: they know nothing of baits, and any layer may import them. */
export const SIM_GROUND = ['flow', 'units', 'numerics', 'sources'];

/** Beside the layers: equations as text, printed by the sheets and checked by the tests. */
export const SIM_BESIDE = ['equations'];

/** The files that stand in sim/ itself: the first belong to the ground, the others on top, lowest first. */
const GROUND_FILES = ['frames', 'warnings'];
export const SIM_TOP = ['steps', 'pipeline', 'advice', 'index'];
export const SIM_FILES = [...GROUND_FILES, ...SIM_TOP];

/** The packages sim/ may import, and from where. */
const SIM_PACKAGES = {
  mathjs: '^sim/(design/expression|equations/render)\\.ts$',
  zod: '^sim/design/',
};

/** @param {readonly string[]} folders @param {readonly string[]} files */
const within = (folders, files = []) =>
  [...folders.map((folder) => `^sim/${folder}/`), ...files.map((file) => `^sim/${file}\\.ts$`)].join('|');

const simOrder = SIM_LAYERS.map((layer, rank) => ({
  name: `sim-order-${layer}`,
  severity: 'error',
  comment:
    `sim/${layer}/ imports only the layers before it (${SIM_LAYERS.slice(0, rank).join(', ') || 'none'}) and the ground. ` +
    'Move the shared piece down to the lower of the two, or pass the answer in as an argument from pipeline.ts.',
  from: { path: within([layer]) },
  to: {
    path: within(
      // the sheets print the equations with the maker's numbers, and so may what comes after them
      [...SIM_LAYERS.slice(rank + 1), ...(rank < SIM_LAYERS.indexOf('sheets') ? SIM_BESIDE : [])],
      SIM_TOP,
    ),
  },
}));

const simEdges = [
  {
    name: 'sim-flow-alone',
    severity: 'error',
    comment: 'sim/flow/ knows nothing of baits, units or numbers. Give the stage what it needs from pipeline.ts.',
    from: { path: '^sim/flow/' },
    to: { path: '^sim/(?!flow/)' },
  },
  {
    name: 'sim-ground-below',
    severity: 'error',
    comment: 'The ground of sim/ serves any layer and so imports none. Move what needs the layer up into the layer.',
    from: { path: within(SIM_GROUND, GROUND_FILES) },
    to: { path: within([...SIM_LAYERS, ...SIM_BESIDE], SIM_TOP) },
  },
  {
    name: 'sim-equations-beside',
    severity: 'error',
    comment: 'Equations are text with symbols: they import the ground and the tables. Pass the numbers in.',
    from: { path: within(SIM_BESIDE) },
    to: { path: within(SIM_LAYERS.slice(1), SIM_TOP) },
  },
  {
    name: 'sim-steps-below-pipeline',
    severity: 'error',
    comment: 'steps.ts says what the answers are, pipeline.ts how they are made. Move the type to steps.ts.',
    from: { path: within([], ['steps']) },
    to: { path: within([], ['pipeline', 'index']) },
  },
  {
    name: 'sim-door-from-inside',
    severity: 'error',
    comment: 'sim/index.ts is the door for src/. Inside sim/ import the file that has it.',
    from: { path: '^sim/' },
    to: { path: within([], ['index']) },
  },
  {
    name: 'sim-without-app',
    severity: 'error',
    comment: 'sim/ is the domain alone. Let src/ ask for the answer and do with it what it likes.',
    from: { path: '^sim/' },
    to: { path: '^(src|shaders|presets|tests)/' },
  },
  {
    name: 'sim-without-node',
    severity: 'error',
    comment: 'sim/ runs in a page and in Node alike. Read and write files in src/cli/, and pass text or bytes.',
    from: { path: '^sim/' },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'sim-without-packages',
    severity: 'error',
    comment:
      `sim/ imports no packages but ${Object.keys(SIM_PACKAGES).join(' and ')}: no three, no React. ` +
      'Give out plain numbers and arrays, and let src/ turn them into what the package wants.',
    from: { path: '^sim/' },
    to: { path: `node_modules/(?!(${Object.keys(SIM_PACKAGES).join('|')})/)` },
  },
  {
    name: 'zod-in-design-only',
    severity: 'error',
    comment: 'zod reads the design file. Validate in sim/design/, and take the checked Design from there.',
    from: { path: '^(sim|src)/', pathNot: SIM_PACKAGES.zod },
    to: { path: 'node_modules/zod/' },
  },
  {
    name: 'mathjs-by-its-doors',
    severity: 'error',
    comment:
      'mathjs is large and is loaded late: import it in sim/design/expression.ts or sim/equations/render.ts, and ask ' +
      'those. Quantities are read in sim/units/parse.ts without it.',
    from: { path: '^(sim|src)/', pathNot: SIM_PACKAGES.mathjs },
    to: { path: 'node_modules/mathjs/' },
  },
];

/** The bundler's settings are not part of what it bundles. */
const SETTINGS = '^src/(cli/)?vite\\.config\\.ts$';

const srcRules = [
  {
    name: 'src-by-the-door',
    severity: 'error',
    comment: 'src/ imports sim/index.ts only. Export there what the app may use.',
    from: { path: '^src/' },
    to: { path: '^sim/(?!index\\.ts$)' },
  },
  {
    name: 'scene-without-panels',
    severity: 'error',
    comment: 'scene/ and panels/ do not know each other. Meet in document/, engine/answers.ts or view/.',
    from: { path: '^src/scene/' },
    to: { path: '^src/panels/' },
  },
  {
    name: 'panels-without-scene',
    severity: 'error',
    comment: 'scene/ and panels/ do not know each other. Meet in document/, engine/answers.ts or view/.',
    from: { path: '^src/panels/' },
    to: { path: '^src/scene/' },
  },
  {
    name: 'app-on-top',
    severity: 'error',
    comment: 'Only src/App.tsx and src/main.tsx put scene and panels together. Keep state in document/ or view/.',
    from: { path: '^src/(document|engine|view|platform|ui)/' },
    to: { path: '^src/(scene|panels|cli)/|^src/(App|main)\\.tsx$' },
  },
  {
    name: 'ui-knows-no-bait',
    severity: 'error',
    comment: 'ui/ is buttons and fields for anything. Pass values and callbacks in from the panel.',
    from: { path: '^src/ui/' },
    to: { path: '^src/(?!ui/)' },
  },
  {
    name: 'three-in-scene-only',
    severity: 'error',
    comment: 'Everything three is in src/scene/. Export a component from there, and load it late.',
    from: { path: '^src/', pathNot: '^src/scene/' },
    to: { path: 'node_modules/(three|@types/three|@react-three)/' },
  },
  {
    name: 'cli-alone',
    severity: 'error',
    comment: 'The command line needs sim/index.ts and Node. Move what it shares with the app into sim/.',
    from: { path: '^src/cli/' },
    to: { path: '^src/(?!cli/)' },
  },
  {
    name: 'page-without-node',
    severity: 'error',
    comment: 'The app runs in a page: no Node there. Use what src/platform/ offers, or do it in src/cli/.',
    from: { path: '^src/', pathNot: `^src/cli/|${SETTINGS}` },
    to: { dependencyTypes: ['core'] },
  },
];

const rulesForAll = [
  {
    name: 'no-cycles',
    severity: 'error',
    comment: 'Two files that need each other are one file, or a third one that both import. Split it out.',
    from: {},
    to: { circular: true },
  },
  {
    name: 'not-from-tests',
    severity: 'error',
    comment: 'Only tests import from tests/. Move what the product needs into sim/ or src/.',
    from: { pathNot: '^tests/' },
    to: { path: '^tests/' },
  },
  {
    name: 'no-development-packages',
    severity: 'error',
    comment: 'This package is only there for development. List it under dependencies, or do without.',
    from: { path: '^(sim|src)/', pathNot: SETTINGS },
    to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
  },
  {
    name: 'must-resolve',
    severity: 'error',
    comment: 'There is no such file or package. Correct the path (imports end in .ts or .tsx) or add the package.',
    from: {},
    to: { couldNotResolve: true },
  },
];

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: /** @type {import('dependency-cruiser').IForbiddenRuleType[]} */ ([
    ...simOrder,
    ...simEdges,
    ...srcRules,
    ...rulesForAll,
  ]),
  options: {
    // an import of a type alone is an arrow too
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
    exclude: { path: '^tests/arch/canary/' },
  },
};
