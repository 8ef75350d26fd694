import type { Float, Vec3 } from '../../sim/index.ts';

/**
 * The metacentre in the body frame: GM over G along the world's vertical; under water, where nothing but B over G rights
 * a body, it is B. null for what sinks: it lies on the ground, and no height over G keeps it upright there.
 */
export function metacentreOf({ state, gravityCentre: [x, y, z], up, gm }: Float): Vec3 | null {
  if (state === 'sinks' || !Number.isFinite(gm)) return null;
  return [x + gm * up[0], y + gm * up[1], z + gm * up[2]];
}
