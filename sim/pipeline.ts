import { forgivenessOf } from './ballast/forgiveness.ts';
import { type BaitParts, holesBefore, type LinkParts, type LinkPlan, planLink } from './ballast/plan.ts';
import { refloat } from './ballast/refloat.ts';
import { type SettledPlan, settlePlan } from './ballast/settle.ts';
import { type Aim, checkTarget, type TargetAnswer } from './ballast/target.ts';
import { type BallastPlan, planBallast } from './ballast/whole.ts';
import { type Assembled, assemble } from './chain/assemble.ts';
import { type Folded, foldBait } from './chain/fold.ts';
import type { YawRange } from './chain/hinge.ts';
import { type JointedBait, jointedBait } from './chain/jointed-bait.ts';
import type { Coat, Design, Hole, Link, Setup, Shop, Target, Wood } from './design/design.ts';
import type { DesignFile } from './design/file.ts';
import { evaluateDesign } from './design/validate.ts';
import { type Outcome, ok, SimError } from './flow/outcome.ts';
import { share } from './flow/share.ts';
import { createList, createStage, part } from './flow/stage.ts';
import { buildHull, type Hull } from './hull/hull.ts';
import { type Accuracy, judgeAccuracy } from './hydro/accuracy.ts';
import { type Attitudes, findAttitudes } from './hydro/attitudes.ts';
import { bodyOf } from './hydro/bait-body.ts';
import { type Float, floatBody } from './hydro/float.ts';
import { type LinkTrees, linkTrees } from './hydro/link-tree.ts';
import { cutLinks, type LinkSpec } from './links/cut.ts';
import { placeFins } from './mass/fin.ts';
import { keepOutsOf } from './mass/keep-out.ts';
import { type Ledger, writeLedger } from './mass/ledger.ts';
import { placeHardware } from './mass/place.ts';
import type { FixedHardware, Hardware, PlacedEye, PlacedFin, PlacedHung, PlacedPin } from './mass/placed.ts';
import { checkSound } from './mass/sound.ts';
import { wallOf } from './mass/wall.ts';
import { type BareSolid, type Detail, measureSolid, meshLink, type Wetted, wetLink } from './mesh/wetted.ts';
import type { Drawn, Refloat, WarnParts } from './out/warn/parts.ts';
import { warn } from './out/warn.ts';
import { warnOfAll } from './out/warn-of-all.ts';
import { findReach, type Reach, yawRanges } from './reach/reach.ts';
import { rollOfBait, rollOfLink } from './roll/roll.ts';
import type { Timed } from './sinking/drag-law.ts';
import { type FallParts, fallPartsOf } from './sinking/fall-parts.ts';
import { type Sinking, sinkBody } from './sinking/sink.ts';
import { type DropFit, fitDrop } from './sinking/timed-drop.ts';
import type { Step, WallAnswer } from './steps.ts';
import { surfaceTension } from './tables/surface-tension.ts';
import { type WaterAnswer, waterAnswer } from './tables/waters.ts';
import type { Celsius, Mm } from './units/brand.ts';

/** Taken for a water whose density was measured: its skin pulls a twentieth more at 0 °C and as much less at 40 °C. */
const USUAL_C: Celsius = 20;

/** What is asked of a design. setup: by name; null is the first. */
export interface Request {
  readonly setup: string | null;
  readonly detail: Detail;
}

/** One memory of the recipe. It may be asked again and again, and may be left half way through. */
export interface Pipeline {
  /** Every answer about a design, in the order they are found. Never throws for a file that was read. */
  readonly steps: (file: DesignFile, request: Request) => Generator<Step, void, void>;
}

/**
 * The recipe: design → setup, water, hull → links → hardware → sound → for each link mesh, solid, wetted, ledger,
 * float → assembled → sinking → target → walls → warnings; then, at full detail, what takes longer: for each link how it sinks, its plan and
 * what it forgives → ballast → planned → reach → jointed, folded; for each link and for the whole accuracy, attitudes and roll → all warnings. Each stage takes the parts it reads and no more, and remembers one call.
 */
export function createPipeline(): Pipeline {
  const bait = createBaitStages();
  // dragging and full meshes take turns: each keeps its own memory, so that neither drives out the other
  const memoriesOf: Record<Detail, LinkStages[]> = { full: [], drag: [] };
  let lastDesign: Outcome<Design> | null = null;

  function* steps(file: DesignFile, request: Request): Generator<Step, void, void> {
    const design = share(lastDesign, evaluateDesign(file));
    lastDesign = design;
    yield { name: 'design', link: null, outcome: design };
    const read = <Value>(pick: (whole: Design) => Value) => part(design, 'design', pick);
    const joints = read((d) => d.joints);
    const length = read((d) => d.body.length);
    const setup = bait.setup(
      read((d) => d.setups),
      ok(request.setup),
    );
    yield { name: 'setup', link: null, outcome: setup };
    const chosen = <Value>(pick: (whole: Setup) => Value) => part(setup, 'setup', pick);
    const coats = chosen((s) => s.coats);
    const water = bait.water(chosen((s) => s.water));
    yield { name: 'water', link: null, outcome: water };
    const hull = bait.hull(read((d) => d.body));
    yield { name: 'hull', link: null, outcome: hull };
    const links = bait.links(
      length,
      read((d) => d.links),
      joints,
    );
    yield { name: 'links', link: null, outcome: links };
    const [hung, holes] = [chosen((s) => s.hung), chosen((s) => s.holes)];
    const fins = bait.fins(
      hull,
      links,
      read((d) => d.fins),
    );
    const hardware = bait.hardware(
      hull,
      links,
      joints,
      read((d) => d.hangers),
      hung,
      holes,
      read((d) => d.fittings),
      read((d) => d.tails),
      fins,
    );
    yield { name: 'hardware', link: null, outcome: hardware };
    const allHung = part(hardware, 'hardware', (placed) => placed.hung);
    const fixed = bait.fixed(hardware);
    const sound = bait.sound(hull, links, joints, fixed, coats, part(setup, 'setup', setupNumber(design)));
    yield { name: 'sound', link: null, outcome: sound };

    const specs = links.status === 'ok' ? links.value : [];
    const memoriesFor = (detail: Detail) => {
      const memories = memoriesOf[detail];
      memories.length = Math.min(memories.length, specs.length);
      return memories;
    };
    function* linkSteps(spec: LinkSpec, detail: Detail): Generator<Step, Made, void> {
      const { index } = spec;
      const memories = memoriesFor(detail);
      memories[index] ??= createLinkStages();
      const link = memories[index];
      const mesh = link.mesh(hull, ok(spec), ok(detail), sound);
      yield { name: 'mesh', link: index, outcome: mesh };
      const solid = link.solid(mesh);
      yield { name: 'solid', link: index, outcome: solid };
      const wetted = link.wetted(hull, ok(spec), ok(detail), mesh, coats);
      yield { name: 'wetted', link: index, outcome: wetted };
      const ownFixed = link.fixed(fixed, ok(index));
      const ownHung = link.hung(allHung, ok(index));
      const named = read((d) => d.links[index]);
      const ledger = link.ledger(
        named,
        read((d) => d.wood),
        coats,
        solid,
        wetted,
        ownFixed,
        sound,
      );
      yield { name: 'ledger', link: index, outcome: ledger };
      const tree = link.tree(
        wetted,
        link.fins(
          part(hardware, 'hardware', (placed) => placed.fins),
          ok(index),
        ),
      );
      const float = link.float(tree, ledger, ownHung, water);
      yield { name: 'float', link: index, outcome: float };
      return { link, solid, wetted, ledger, tree, fixed: ownFixed, hung: ownHung, float };
    }
    const made: Made[] = [];
    for (const spec of specs) made.push(yield* linkSteps(spec, request.detail));

    const wetted = bait.wetted(made.map((link) => link.wetted));
    const ledgers = bait.ledgers(made.map((link) => link.ledger));
    const floats = bait.floats(made.map((link) => link.float));
    const trees = bait.trees(made.map((link) => link.tree));
    const assembled = bait.assembled(trees, ledgers, allHung, water);
    yield { name: 'assembled', link: null, outcome: assembled };
    const drop = bait.drop(
      trees,
      ledgers,
      allHung,
      water,
      chosen((s) => s.drop),
    );
    yield { name: 'drop', link: null, outcome: drop };
    const timed = part(drop, 'drop', (fit) => (fit?.kind === 'fitted' ? fit.timed : null));
    const fall = bait.fall(trees, ledgers, allHung, water, timed);
    const [wanted, wantedOfLinks] = [chosen((s) => s.target), chosen((s) => s.linkTargets)];
    // a fall takes as long as all the rest of a drag: only where a speed is aimed at is it asked for then
    const isAsked = request.detail === 'full' || (wanted.status === 'ok' && wanted.value.kind === 'sink');
    const assembledSinking = isAsked ? bait.sinking(fall, assembled) : ok(null);
    if (isAsked) yield { name: 'assembledSinking', link: null, outcome: assembledSinking };
    const target = bait.target(wanted, wantedOfLinks, links, length, wetted, floats, assembled, fall, assembledSinking);
    yield { name: 'target', link: null, outcome: target };
    const walls = bait.walls(hull, fixed, links);
    yield { name: 'walls', link: null, outcome: walls };
    const drawn = bait.drawn(
      joints,
      read((d) => d.hangers),
      read((d) => d.shop.wall),
      read((d) => d.setups),
      part(setup, 'setup', setupNumber(design)),
      ok(file),
    );
    const thinnest = part(walls, 'walls', ({ holes: ofHoles }) => ofHoles);
    const warnParts = bait.warnParts(water, hull, links, hardware, thinnest, wetted, floats, assembled, target, drawn);
    const warnings = bait.warnings(warnParts);
    yield { name: 'warnings', link: null, outcome: warnings };
    if (request.detail === 'drag') return;

    for (const [index, { link, float }] of made.entries()) {
      yield { name: 'sinking', link: index, outcome: link.sinking(fall, float, ok(index)) };
    }
    const baitParts = bait.baitParts(
      hull,
      read((d) => d.wood),
      coats,
      water,
      read((d) => d.shop),
    );
    const parts = made.map(({ link, solid, wetted: skin, tree, fixed: held, hung: hanging }, index) =>
      link.parts(
        ok(specs[index]),
        read((d) => d.links[index]),
        solid,
        skin,
        tree,
        held,
        hanging,
        part(target, 'target', ({ links: aims }) => aims[index]),
        link.likes(
          read((d) => d.setups),
          setup,
          joints,
          ok(index),
        ),
      ),
    );
    const plans: Outcome<LinkPlan>[] = [];
    for (const [index, { link, tree, ledger, hung: hanging, float }] of made.entries()) {
      const forgiveness = link.forgiveness(tree, ledger, hanging, water, float, ok(specs[index]));
      const plan = link.plan(baitParts, parts[index]);
      yield { name: 'plan', link: index, outcome: plan };
      yield { name: 'forgiveness', link: index, outcome: forgiveness };
      plans.push(plan);
    }
    const linkParts = bait.linkParts(parts);
    const ballast = bait.ballast(baitParts, linkParts, bait.plans(plans), wanted);
    yield { name: 'ballast', link: null, outcome: ballast };
    const planned = bait.planned(baitParts, linkParts, ballast, wanted, wantedOfLinks, length, timed);
    yield { name: 'planned', link: null, outcome: planned };
    const held = <Value>(pick: (placed: Hardware) => Value) => part(hardware, 'hardware', pick);
    const reach = bait.reach(
      hull,
      links,
      joints,
      held(({ eyes }) => eyes),
      held(({ pins }) => pins),
      held(({ fins: plates }) => plates),
      coats,
      sound,
    );
    yield { name: 'reach', link: null, outcome: reach };
    const chain = bait.chain(trees, ledgers, allHung, water, links, joints, assembled, assembledSinking);
    const swings = part(reach, 'reach', yawRanges);
    const jointed = bait.jointed(chain, swings);
    yield { name: 'jointed', link: null, outcome: jointed };
    const folded = bait.folded(chain, part(reach, 'reach', foldRanges));
    yield { name: 'folded', link: null, outcome: folded };

    const accuracies: Outcome<Accuracy>[] = [];
    const rests: Outcome<Attitudes>[] = [];
    const rough = specs.map((spec) => drained(linkSteps(spec, 'drag')));
    for (const [index, { link, tree, ledger, hung, float }] of made.entries()) {
      const coarse = rough[index];
      const accuracy = link.accuracy(tree, ledger, coarse.tree, coarse.ledger, hung, water, float);
      yield { name: 'accuracy', link: index, outcome: accuracy };
      const attitudes = link.attitudes(tree, ledger, coarse.tree, coarse.ledger, hung, water, float);
      yield { name: 'attitudes', link: index, outcome: attitudes };
      const roll = link.roll(baitParts, parts[index], float, link.plannedHoles(planned, ok(index)));
      yield { name: 'roll', link: index, outcome: roll };
      accuracies.push(accuracy);
      rests.push(attitudes);
    }
    const roughTrees = bait.roughTrees(rough.map((link) => link.tree));
    const roughLedgers = bait.roughLedgers(rough.map((link) => link.ledger));
    // a bait in one piece is its only link
    const [whole, ...more] = made;
    const alone = whole !== undefined && more.length === 0;
    const assembledAccuracy = alone
      ? accuracies[0]
      : bait.accuracy(trees, ledgers, roughTrees, roughLedgers, allHung, water, assembled);
    yield { name: 'assembledAccuracy', link: null, outcome: assembledAccuracy };
    const assembledAttitudes = alone
      ? rests[0]
      : bait.attitudes(trees, ledgers, roughTrees, roughLedgers, allHung, water, assembled);
    yield { name: 'assembledAttitudes', link: null, outcome: assembledAttitudes };
    yield { name: 'assembledRoll', link: null, outcome: bait.roll(baitParts, linkParts, assembled) };
    const tried = bait.refloat(baitParts, linkParts, wanted, wantedOfLinks, length, timed);
    const allWarnings = bait.allWarnings(
      warnParts,
      bait.accuracies(accuracies),
      bait.rests(rests),
      assembledAccuracy,
      assembledAttitudes,
      tried,
      reach,
      jointed,
      folded,
    );
    yield { name: 'allWarnings', link: null, outcome: allWarnings };
  }
  return { steps };
}

/** Sees a run through and gives what it comes to. */
function drained<Value>(run: Generator<unknown, Value, void>): Value {
  for (;;) {
    const { done, value } = run.next();
    if (done) return value;
  }
}

interface Made {
  readonly link: LinkStages;
  readonly solid: Outcome<BareSolid>;
  readonly wetted: Outcome<Wetted>;
  readonly ledger: Outcome<Ledger>;
  readonly tree: Outcome<LinkTrees>;
  readonly fixed: Outcome<FixedHardware>;
  readonly hung: Outcome<Hardware['hung']>;
  readonly float: Outcome<Float>;
}

/** What every warning is read from. */
const WARNED_OF = [
  'water',
  'hull',
  'links',
  'hardware',
  'walls',
  'wetted',
  'float',
  'assembled',
  'target',
  'design',
] as const;

function createBaitStages() {
  return {
    setup: createStage(['design', 'request'], chooseSetup),
    water: createStage(['setup'], waterAnswer),
    hull: createStage(['design'], buildHull),
    links: createStage(['design', 'design', 'design'], cutLinks),
    // laid out apart from the rest, so that a hole moved leaves the fins and their meshes as they are
    fins: createStage(['hull', 'links', 'design'], placeFins, 'whole'),
    hardware: createStage(
      ['hull', 'links', 'design', 'design', 'setup', 'setup', 'design', 'design', 'fins'],
      placeHardware,
    ),
    // what hangs is no part of what is made in wood: a heavier hook asks neither soundness nor ledgers anew
    fixed: createStage(
      ['hardware'],
      ({ eyes, pins, holes, fittings, fins, finFaults }: Hardware): FixedHardware => ({
        eyes,
        pins,
        holes,
        fittings,
        fins,
        finFaults,
      }),
    ),
    sound: createStage(['hull', 'links', 'design', 'hardware', 'setup', 'setup'], checkSound),
    walls: createStage(
      ['hull', 'hardware', 'links'],
      (hull: Hull, hardware: FixedHardware, links: readonly LinkSpec[]): WallAnswer => ({
        holes: hardware.holes.map((hole) => wallOf(hull, hole)),
        keepOuts: links.map((spec) => keepOutsOf(spec, hardware)),
      }),
    ),
    wetted: createList<Wetted>('wetted'),
    ledgers: createList<Ledger>('ledger'),
    floats: createList<Float>('float'),
    trees: createList<LinkTrees>('wetted'),
    roughTrees: createList<LinkTrees>('wetted'),
    roughLedgers: createList<Ledger>('ledger'),
    accuracies: createList<Accuracy>('accuracy'),
    rests: createList<Attitudes>('attitudes'),
    assembled: createStage(
      ['wetted', 'ledger', 'hardware', 'water'],
      (trees: readonly LinkTrees[], ledgers: readonly Ledger[], hung: Hardware['hung'], water: WaterAnswer) =>
        floatBody(bodyOf(trees, ledgers, hung, water)),
    ),
    drop: createStage(
      ['wetted', 'ledger', 'hardware', 'water', 'setup'],
      (
        trees: readonly LinkTrees[],
        ledgers: readonly Ledger[],
        hung: Hardware['hung'],
        water: WaterAnswer,
        drop: Setup['drop'],
      ): DropFit | null => drop && fitDrop(fallPartsOf(trees, ledgers, hung, water, null).whole, drop),
    ),
    fall: createStage(['wetted', 'ledger', 'hardware', 'water', 'drop'], fallPartsOf, 'whole'),
    sinking: createStage(['float', 'assembled'], ({ whole }: FallParts, assembled: Float) =>
      sinkBody(whole, assembled),
    ),
    target: createStage(
      ['setup', 'setup', 'links', 'design', 'wetted', 'float', 'assembled', 'float', 'assembledSinking'],
      (
        target: Target,
        linkTargets: Setup['linkTargets'],
        links: readonly LinkSpec[],
        length: Mm,
        wetted: readonly Wetted[],
        floats: readonly Float[],
        assembled: Float,
        fall: FallParts,
        sinking: Sinking | null,
      ) =>
        checkTarget({
          target,
          linkTargets,
          names: links.map((link) => link.name),
          spans: links.map((link) => link.span),
          length,
          wetted,
          floats,
          assembled,
          fall,
          sinking,
        }),
    ),
    drawn: createStage(
      ['design', 'design', 'design', 'design', 'setup', 'design'],
      (
        joints: Design['joints'],
        hangers: Design['hangers'],
        wall: Mm,
        setups: readonly Setup[],
        setup: number,
        { joints: writtenJoints, hangers: writtenHangers, setups: writtenSetups }: DesignFile,
      ): Drawn => ({
        joints,
        hangers,
        wall,
        setups,
        setup,
        file: { joints: writtenJoints, hangers: writtenHangers, setups: writtenSetups },
      }),
    ),
    warnParts: createStage(
      WARNED_OF,
      (
        water: WaterAnswer,
        hull: Hull,
        links: readonly LinkSpec[],
        hardware: Hardware,
        walls: WallAnswer['holes'],
        wetted: readonly Wetted[],
        floats: readonly Float[],
        assembled: Float,
        target: TargetAnswer,
        drawn: Drawn,
      ): WarnParts => ({ water, hull, links, hardware, walls, wetted, floats, assembled, target, drawn }),
      'whole',
    ),
    warnings: createStage(['target'], (parts: WarnParts) => warn(parts)),
    baitParts: createStage(
      ['hull', 'design', 'setup', 'water', 'design'],
      (hull: Hull, wood: Wood, coats: readonly Coat[], water: WaterAnswer, shop: Shop): BaitParts => ({
        hull,
        wood,
        coats,
        water,
        shop,
      }),
      'whole',
    ),
    linkParts: createList<LinkParts>('float'),
    refloat: createStage(
      ['setup', 'float', 'setup', 'setup', 'design', 'drop'],
      (
        shared: BaitParts,
        links: readonly LinkParts[],
        target: Target,
        linkTargets: Setup['linkTargets'],
        length: Mm,
        timed: Timed | null,
      ): Refloat =>
        (other) =>
          refloat({ ...shared, links, target, linkTargets, length, timed }, other),
      'whole',
    ),
    plans: createList<LinkPlan>('plan'),
    ballast: createStage(
      ['setup', 'float', 'plan', 'setup'],
      (shared: BaitParts, links: readonly LinkParts[], plans: readonly LinkPlan[], { trim }: Target) =>
        planBallast(shared, links, trim, plans),
    ),
    planned: createStage(
      ['setup', 'float', 'ballast', 'setup', 'setup', 'design', 'drop'],
      (
        shared: BaitParts,
        links: readonly LinkParts[],
        { holes }: BallastPlan,
        target: Target,
        linkTargets: Setup['linkTargets'],
        length: Mm,
        timed: Timed | null,
      ) => settlePlan({ ...shared, links, holes, target, linkTargets, length, timed }),
    ),
    chain: createStage(
      ['wetted', 'ledger', 'hardware', 'water', 'links', 'design', 'assembled', 'sinking'],
      (
        trees: readonly LinkTrees[],
        ledgers: readonly Ledger[],
        hung: Hardware['hung'],
        water: WaterAnswer,
        links: readonly LinkSpec[],
        joints: Design['joints'],
        float: Float,
        fall: Sinking | null,
      ): JointedBait | null =>
        joints.length === 0 ? null : jointedBait({ trees, ledgers, hung, water, links, joints, float, fall }),
      'whole',
    ),
    jointed: createStage(
      ['assembled', 'reach'],
      (bait: JointedBait | null, ranges: readonly YawRange[]): Assembled | null =>
        bait && assemble(bait.chain, bait.start, ranges),
    ),
    folded: createStage(
      ['assembled', 'reach'],
      (bait: JointedBait | null, ranges: readonly YawRange[]): Folded | null =>
        bait && foldBait(bait.chain, bait.start, ranges),
    ),
    reach: createStage(
      ['hull', 'links', 'design', 'hardware', 'hardware', 'hardware', 'setup', 'sound'],
      (
        hull: Hull,
        links: readonly LinkSpec[],
        joints: Design['joints'],
        eyes: readonly PlacedEye[],
        pins: readonly PlacedPin[],
        fins: readonly PlacedFin[],
        coats: readonly Coat[],
        _sound: true,
      ) => findReach({ hull, links, joints, hardware: { eyes, pins, fins }, coats }),
    ),
    accuracy: createStage(
      ['wetted', 'ledger', 'wetted', 'ledger', 'hardware', 'water', 'assembled'],
      (...parts: TwoMeshes) => accuracyOf(...parts),
    ),
    attitudes: createStage(
      ['wetted', 'ledger', 'wetted', 'ledger', 'hardware', 'water', 'assembled'],
      (...parts: TwoMeshes) => attitudesOf(...parts),
    ),
    roll: createStage(['setup', 'float', 'assembled'], rollOfBait),
    allWarnings: createStage(
      [
        'target',
        'accuracy',
        'attitudes',
        'assembledAccuracy',
        'assembledAttitudes',
        'float',
        'reach',
        'reach',
        'reach',
      ],
      (
        parts: WarnParts,
        accuracies: readonly Accuracy[],
        rests: readonly Attitudes[],
        accuracy: Accuracy,
        attitudes: Attitudes,
        refloat: Refloat,
        reach: Reach,
        jointed: Assembled | null,
        folded: Folded | null,
      ) =>
        warnOfAll({
          parts,
          reach,
          jointed,
          folded,
          refloat,
          whole: { float: parts.assembled, accuracy, attitudes },
          links: parts.links.map(({ name }, i) => ({
            name,
            float: parts.floats[i],
            accuracy: accuracies[i],
            attitudes: rests[i],
          })),
        }),
    ),
  };
}

function createLinkStages() {
  return {
    mesh: createStage(
      ['hull', 'links', 'request', 'sound'],
      (hull: Hull, spec: LinkSpec, detail: Detail, _sound: true) => meshLink(hull, spec, detail),
      'whole',
    ),
    solid: createStage(['mesh'], measureSolid),
    wetted: createStage(['hull', 'links', 'request', 'mesh', 'setup'], wetLink, 'whole'),
    fixed: createStage(['hardware', 'links'], fixedOf),
    hung: createStage(['hardware', 'links'], ofLink<PlacedHung>),
    ledger: createStage(
      ['design', 'design', 'setup', 'solid', 'wetted', 'hardware', 'sound'],
      (
        link: Link,
        wood: Wood,
        coats: readonly Coat[],
        solid: BareSolid,
        wetted: Wetted,
        hardware: FixedHardware,
        _sound: true,
      ) => writeLedger({ link, wood, coats, solid, wetted, hardware }),
    ),
    fins: createStage(['hardware', 'links'], ofLink<PlacedFin>),
    tree: createStage(
      ['wetted', 'hardware'],
      (wetted: Wetted, fins: readonly PlacedFin[]) => linkTrees(wetted.mesh, fins),
      'whole',
    ),
    float: createStage(
      ['wetted', 'ledger', 'hardware', 'water'],
      (tree: LinkTrees, ledger: Ledger, hung: Hardware['hung'], water: WaterAnswer) =>
        floatBody(bodyOf([tree], [ledger], hung, water)),
    ),
    parts: createStage(
      ['links', 'design', 'solid', 'wetted', 'wetted', 'hardware', 'hardware', 'target', 'design'],
      (
        spec: LinkSpec,
        link: Link,
        solid: BareSolid,
        wetted: Wetted,
        trees: LinkTrees,
        hardware: FixedHardware,
        hung: Hardware['hung'],
        aim: Aim,
        likes: readonly Hole[],
      ): LinkParts => ({ spec, link, solid, wetted, trees, hardware, hung, aim, likes }),
      'whole',
    ),
    sinking: createStage(['float', 'float', 'links'], ({ links }: FallParts, float: Float, index: number) =>
      sinkBody(links[index], float),
    ),
    forgiveness: createStage(
      ['wetted', 'ledger', 'hardware', 'water', 'float', 'links'],
      (tree: LinkTrees, ledger: Ledger, hung: Hardware['hung'], water: WaterAnswer, float: Float, { span }: LinkSpec) =>
        forgivenessOf(bodyOf([tree], [ledger], hung, water), hung, float, span),
    ),
    likes: createStage(['design', 'setup', 'design', 'links'], holesBefore),
    plan: createStage(['setup', 'float'], (shared: BaitParts, parts: LinkParts) => planLink(shared, parts)),
    accuracy: createStage(
      ['wetted', 'ledger', 'wetted', 'ledger', 'hardware', 'water', 'float'],
      (tree: LinkTrees, ledger: Ledger, roughTree: LinkTrees, roughLedger: Ledger, ...rest: Around) =>
        accuracyOf([tree], [ledger], [roughTree], [roughLedger], ...rest),
    ),
    attitudes: createStage(
      ['wetted', 'ledger', 'wetted', 'ledger', 'hardware', 'water', 'float'],
      (tree: LinkTrees, ledger: Ledger, roughTree: LinkTrees, roughLedger: Ledger, ...rest: Around) =>
        attitudesOf([tree], [ledger], [roughTree], [roughLedger], ...rest),
    ),
    plannedHoles: createStage(['planned', 'links'], ({ holes }: SettledPlan, index: number) =>
      holes.flatMap(({ hole }) => (hole.link === index ? hole : [])),
    ),
    roll: createStage(['setup', 'float', 'float', 'planned'], rollOfLink),
  };
}

type LinkStages = ReturnType<typeof createLinkStages>;

/** Throws SimError when no setup has the name; lists those there are. */
function chooseSetup(setups: readonly Setup[], name: string | null): Setup {
  const found = name === null ? setups[0] : setups.find((setup) => setup.name === name);
  if (found) return found;
  const known = setups.map((setup) => `"${setup.name}"`).join(', ');
  const message = `no setup is named "${name}"; there are ${known}`;
  throw new SimError([{ code: 'setup/unknown-name', path: 'setups', message, hint: 'choose one of these' }]);
}

/** How far each turns as all of them fold together: nose and tail may meet before. */
function foldRanges({ joints, whole }: Reach): readonly YawRange[] {
  const share = ({ fold, joints: all }: Reach['whole']['port']) => (all > 0 ? fold / all : 0);
  const [toPort, toStarboard] = [share(whole.port), share(whole.starboard)];
  return joints.map(({ port, starboard }) => ({
    port: toPort * port.angle,
    starboard: toStarboard * starboard.angle,
  }));
}

function setupNumber(design: Outcome<Design>): (setup: Setup) => number {
  return ({ name }) => (design.status === 'ok' ? design.value.setups.findIndex((setup) => setup.name === name) : 0);
}

/** What of a list belongs to one link. */
function ofLink<Item extends { readonly link: number }>(items: readonly Item[], link: number): readonly Item[] {
  return items.filter((item) => item.link === link);
}

function fixedOf({ eyes, pins, holes, fittings, fins, finFaults }: FixedHardware, link: number): FixedHardware {
  return {
    eyes: ofLink(eyes, link),
    pins: ofLink(pins, link),
    holes: ofLink(holes, link),
    fittings: ofLink(fittings, link),
    fins: ofLink(fins, link),
    finFaults,
  };
}

/** What hangs, in which water, and how it floats. */
type Around = readonly [hung: Hardware['hung'], water: WaterAnswer, float: Float];
/** A body on the full mesh and on the coarse one. */
type TwoMeshes = readonly [
  trees: readonly LinkTrees[],
  ledgers: readonly Ledger[],
  roughTrees: readonly LinkTrees[],
  roughLedgers: readonly Ledger[],
  ...around: Around,
];

function accuracyOf(...[trees, ledgers, roughTrees, roughLedgers, hung, water, float]: TwoMeshes): Accuracy {
  const [full, rough] = [bodyOf(trees, ledgers, hung, water), bodyOf(roughTrees, roughLedgers, hung, water)];
  return judgeAccuracy(full, rough, float, surfaceTension(water.temperature ?? USUAL_C));
}

function attitudesOf(...[trees, ledgers, roughTrees, roughLedgers, hung, water, float]: TwoMeshes): Attitudes {
  const [full, rough] = [bodyOf(trees, ledgers, hung, water), bodyOf(roughTrees, roughLedgers, hung, water)];
  return findAttitudes(full, rough, float);
}
