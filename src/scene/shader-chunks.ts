import cutAway from '../../shaders/lib/cut-away.glsl?raw';
import dashDot from '../../shaders/lib/dash-dot.glsl?raw';
import drawnLine from '../../shaders/lib/drawn-line.glsl?raw';
import fresnel from '../../shaders/lib/fresnel.glsl?raw';
import hatch from '../../shaders/lib/hatch.glsl?raw';
import lamp from '../../shaders/lib/lamp.glsl?raw';
import noise from '../../shaders/lib/noise.glsl?raw';
import sceneNormal from '../../shaders/lib/scene-normal.glsl?raw';
import shine from '../../shaders/lib/shine.glsl?raw';
import sky from '../../shaders/lib/sky.glsl?raw';
import slotMouth from '../../shaders/lib/slot-mouth.glsl?raw';
import underwater from '../../shaders/lib/underwater.glsl?raw';
import caustic from '../../shaders/water/caustic.glsl?raw';
import halfUnder from '../../shaders/water/half-under.glsl?raw';
import waves from '../../shaders/water/waves.glsl?raw';
import grain from '../../shaders/wood/grain.glsl?raw';

/** Our own pieces, by the name that `#include <name>` asks for. */
const CHUNKS: Readonly<Record<string, string>> = {
  caustic,
  'cut-away': cutAway,
  'dash-dot': dashDot,
  'drawn-line': drawnLine,
  fresnel,
  grain,
  'half-under': halfUnder,
  hatch,
  lamp,
  noise,
  'scene-normal': sceneNormal,
  shine,
  sky,
  'slot-mouth': slotMouth,
  underwater,
  waves,
};

/** The line by which a shader asks for a piece. Ours have no underscores, three's have; three cannot read hyphens. */
const INCLUDE = /^[ \t]*#include +<([a-z-]+)>/gm;

/** A shader with our pieces put in. What it asks of three's own pieces is left for three to find. */
export function withChunks(source: string): string {
  return source.replace(INCLUDE, (line, name: string) => CHUNKS[name] ?? line);
}
