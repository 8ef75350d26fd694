import type { DesignFile } from '../../sim/design/file.ts';
import { makeDesignFile } from './make-design.ts';

/** The plain bait of two links as it can be made: its aft hole stands clear of the hinge's shanks. */
export const SOUND_DESIGN: DesignFile = moveAftHole(makeDesignFile());

function moveAftHole(file: DesignFile): DesignFile {
  const setups = file.setups.map((setup) => ({
    ...setup,
    holes: setup.holes.map((hole, i) => (i === 1 ? { ...hole, x_mm: 80 } : hole)),
  }));
  return { ...file, setups };
}
