import type { Design, Setup } from '../design/design.ts';
import type { ProposedEdit } from '../design/edit.ts';
import type { DesignFile, SetupEntry } from '../design/file.ts';
import { nextHook, SNAP, SPLIT_RING } from '../tables/hooks.ts';
import { woodNamed } from '../tables/woods.ts';
import { gramPerCm3FromGramPerMm3 } from '../units/convert.ts';

/** What a maker asks about a bait that is drawn. sameTarget: with the ballast that its target then wants. */
export interface WhatIf {
  readonly name: string;
  readonly edit: ProposedEdit;
  readonly sameTarget: boolean;
}

const FRESH_G_KG = 0;
/** The open sea. IAPSO standard sea water has a practical salinity of 35, which is 35.17 g/kg. */
const SEA_G_KG = 35;
const TEMPERATURES_C = [4, 10, 20, 30] as const;
/** Two coats of brushed epoxy. Common practice. */
const MORE_COAT = { name: 'two more topcoats', thickness_mm: 0.3, density_g_cm3: 1.15, covers: 'skin' } as const;
/** Woods that a maker may have beside the one at hand: a light one and a heavier one. */
const OTHER_WOODS = ['western redcedar', 'basswood', 'hard maple'] as const;

/** The questions of one setup, each as an edit of the design that answers it. */
export function whatIfsOf(file: DesignFile, design: Design, setup: Setup): readonly WhatIf[] {
  const index = design.setups.findIndex(({ name }) => name === setup.name);
  const entry = file.setups[index];
  const path = `setups.${index}`;
  return [
    ...waterWhatIfs(setup, path),
    ...hungWhatIfs(design, setup, entry, path),
    coatWhatIf(file, entry, path),
    ...woodWhatIfs(file, design),
  ];
}

function plain(name: string, sets: ProposedEdit['sets']): WhatIf {
  return { name, edit: { says: name, sets }, sameTarget: false };
}

function waterWhatIfs({ water }: Setup, path: string): readonly WhatIf[] {
  const at = (temperature_c: number, salinity_g_kg: number) => [
    { path: `${path}.water`, value: { temperature_c, salinity_g_kg } },
  ];
  const temperature = water.kind === 'natural' ? water.temperature : 20;
  const salinity = water.kind === 'natural' ? water.salinity : FRESH_G_KG;
  const isSea = salinity > SEA_G_KG / 2;
  const other = isSea
    ? plain('in fresh water', at(temperature, FRESH_G_KG))
    : plain('in the sea, 35 g/kg', at(temperature, SEA_G_KG));
  const others = TEMPERATURES_C.filter((celsius) => water.kind !== 'natural' || celsius !== water.temperature);
  return [other, ...others.map((celsius) => plain(`water of ${celsius} °C`, at(celsius, salinity)))];
}

function hungWhatIfs(design: Design, setup: Setup, { hung }: SetupEntry, path: string): readonly WhatIf[] {
  const tie = design.hangers.find(({ on }) => on === 'nose');
  const withMasses = (masses: readonly (number | null)[]) =>
    hung.map((item, i) => ({ ...item, mass_g: tidy(masses[i] ?? setup.hung[i].mass) }));
  const sized = (by: 1 | -1) => setup.hung.map(({ mass }) => nextHook(mass, by));
  const hooks = ([1, -1] as const).flatMap((by) =>
    sized(by).every((mass) => mass === null)
      ? []
      : [plain(`hooks one size ${by === 1 ? 'up' : 'down'}`, [{ path: `${path}.hung`, value: withMasses(sized(by)) }])],
  );
  const ring =
    hung.length === 0
      ? []
      : [
          plain(`a ${SPLIT_RING.size} split ring more on each hook`, [
            { path: `${path}.hung`, value: withMasses(setup.hung.map(({ mass }) => mass + SPLIT_RING.mass)) },
          ]),
        ];
  const names = new Set(setup.hung.map(({ name }) => name));
  const snap =
    tie === undefined || names.has('snap')
      ? []
      : [
          plain(`a snap of ${SNAP.mass} g at the nose`, [
            {
              path: `${path}.hung`,
              value: [...hung, { name: 'snap', from: tie.name, mass_g: SNAP.mass, hang_mm: SNAP.hang }],
            },
          ]),
        ];
  return [...hooks, ...ring, ...snap];
}

function coatWhatIf(file: DesignFile, entry: SetupEntry, path: string): WhatIf {
  const [where, coats] = entry.coats ? [`${path}.coats`, entry.coats] : ['coats', file.coats];
  return plain(MORE_COAT.name, [{ path: where, value: [...coats, MORE_COAT] }]);
}

function woodWhatIfs(file: DesignFile, { wood, links }: Design): readonly WhatIf[] {
  // a link whose own wood was weighed stays of that wood
  if (links.every(({ density }) => density !== null)) return [];
  return OTHER_WOODS.flatMap((name) => {
    const species = woodNamed(name);
    if (species === null || wood.species === name) return [];
    const density_g_cm3 = tidy(gramPerCm3FromGramPerMm3(species.density.usual));
    const edit = {
      says: `carve it of ${name}`,
      sets: [{ path: 'wood', value: { ...file.wood, species: name, density_g_cm3 } }],
    };
    return [{ name: `of ${name}, ${density_g_cm3.toFixed(2)} g/cm³, at the same target`, edit, sameTarget: true }];
  });
}

function tidy(value: number): number {
  return Number(value.toFixed(6)) + 0;
}
