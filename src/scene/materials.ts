import {
  AlwaysDepth,
  AlwaysStencilFunc,
  BackSide,
  Color,
  CustomBlending,
  DecrementStencilOp,
  DoubleSide,
  EqualStencilFunc,
  FrontSide,
  GreaterDepth,
  InvertStencilOp,
  type IUniform,
  OneFactor,
  OneMinusSrcAlphaFactor,
  ReplaceStencilOp,
  ShaderMaterial,
  type ShaderMaterialParameters,
  SrcAlphaFactor,
  Vector2,
  Vector3,
  Vector4,
} from 'three';
import barredFragment from '../../shaders/hardware/barred.frag.glsl?raw';
import hiddenFragment from '../../shaders/hardware/hidden.frag.glsl?raw';
import partFragment from '../../shaders/hardware/part.frag.glsl?raw';
import partVertex from '../../shaders/hardware/part.vert.glsl?raw';
import edgeVertex from '../../shaders/ink/edge.vert.glsl?raw';
import ghostFragment from '../../shaders/ink/ghost.frag.glsl?raw';
import inkFragment from '../../shaders/ink/ink.frag.glsl?raw';
import outlineVertex from '../../shaders/ink/outline.vert.glsl?raw';
import surfaceFragment from '../../shaders/water/surface.frag.glsl?raw';
import surfaceVertex from '../../shaders/water/surface.vert.glsl?raw';
import washFragment from '../../shaders/water/wash.frag.glsl?raw';
import washVertex from '../../shaders/water/wash.vert.glsl?raw';
import linkFragment from '../../shaders/wood/link.frag.glsl?raw';
import linkVertex from '../../shaders/wood/link.vert.glsl?raw';
import type { Aim, Mm, WettedSlot } from '../../sim/index.ts';
import type { Palette } from './palette.ts';
import { withChunks } from './shader-chunks.ts';

/** What all shaders of one tub share: one object for each uniform, so that setting it once sets it everywhere. */
export interface Shared {
  readonly uPixelRatio: IUniform<number>;
  readonly uViewport_px: IUniform<Vector2>;
  readonly uInk: IUniform<Color>;
  readonly uPencil: IUniform<Color>;
  readonly uPaper: IUniform<Color>;
  readonly uWrong: IUniform<Color>;
  readonly uWater: IUniform<Color>;
  readonly uDeep: IUniform<Color>;
  readonly uWaterline: IUniform<Color>;
  readonly uSkyHorizon: IUniform<Color>;
  readonly uSkyZenith: IUniform<Color>;
  readonly uMark_mm: IUniform<Vector4>;
  readonly uOther_mm: IUniform<Vector4>;
  readonly uRipple: IUniform<number>;
  readonly uTime_s: IUniform<number>;
  readonly uCut_mm: IUniform<number>;
  readonly uKept: IUniform<number>;
}

/** Slots that one link's faces can have: a link has two faces, and a slot needs more height than a pin's eye. */
export const SLOT_LIMIT = 8;

const OPENS_NUMBER = { fore: 1, aft: 2 } as const;

/** Pixels of wood are marked in the stencil, so that hidden parts show only through wood. */
const WOOD = 1;
const NOT_WOOD = 0;
/** The cut face, until the plane it lies in has its depth; one above wood, so that it becomes wood by counting down. */
const CUT_FACE = 2;
/** Bits that are set once cut faces have become wood: a keep-out is drawn there, a wanted wall is. */
const BARRED = 2;
const WALLED = 4;

/** Farther to port than any bait reaches: nothing is cut away. */
const UNCUT_MM = -1e6;

/** What wood and metal fade into under water, by day and by night. */
const DEEP = '#2e7f8c';

/** Share of the water's colour in the sky overhead. */
const ZENITH_BLUE = 0.25;

/** Width of a line on the page in CSS pixels: the visible edge of drafting. */
const OUTLINE_PX = 1.1;
/** Of a line that is not an edge of anything. */
const THIN_PX = 0.8;

/** Uniforms that every tub material may ask for, in the palette's colours. */
export function makeShared(): Shared {
  return {
    uPixelRatio: { value: 1 },
    uViewport_px: { value: new Vector2(1, 1) },
    uInk: { value: new Color() },
    uPencil: { value: new Color() },
    uPaper: { value: new Color() },
    uWrong: { value: new Color() },
    uWater: { value: new Color() },
    uDeep: { value: new Color(DEEP) },
    uWaterline: { value: new Color() },
    uSkyHorizon: { value: new Color() },
    uSkyZenith: { value: new Color() },
    uMark_mm: { value: new Vector4(0, 0, 0, 1) },
    uOther_mm: { value: new Vector4(0, 0, 0, 1) },
    uRipple: { value: 0 },
    uTime_s: { value: 0 },
    ...uncut(),
  };
}

/** Uniforms of what stays whole when the bait is cut. */
function uncut(): Pick<Shared, 'uCut_mm' | 'uKept'> {
  return { uCut_mm: { value: UNCUT_MM }, uKept: { value: 1 } };
}

/** cut: y of the plane in the body frame, or null for none. kept: 1 where starboard of it stays, -1 where port does. */
export function setCutPlane(shared: Shared, cut: Mm | null, kept: 1 | -1): void {
  shared.uCut_mm.value = cut ?? UNCUT_MM;
  shared.uKept.value = cut === null ? 1 : kept;
}

export function setPalette(shared: Shared, palette: Palette): void {
  shared.uInk.value.set(palette.ink);
  shared.uPencil.value.set(palette.pencil);
  shared.uPaper.value.set(palette.paper);
  shared.uWrong.value.set(palette.picked);
  shared.uWater.value.set(palette.water);
  shared.uWaterline.value.set(palette.waterDeep);
  // the sky in the water is the paper's own light, a little bluer overhead
  shared.uSkyHorizon.value.set(palette.paper);
  shared.uSkyZenith.value.set(palette.paper).lerp(shared.uWater.value, ZENITH_BLUE);
}

/** Tells the shaders how many device pixels the tub has, and how many of them make one of the page's. */
export function setViewport(shared: Shared, width_px: number, height_px: number, pixelRatio: number): void {
  shared.uViewport_px.value.set(width_px, height_px);
  shared.uPixelRatio.value = pixelRatio;
}

/** ripple: 0 is a mirror, 1 a lively breeze. */
export function setWaves(shared: Shared, ripple: number, time_s: number): void {
  shared.uRipple.value = ripple;
  shared.uTime_s.value = time_s;
}

/** Draws the waterline aimed for on the wood, dashed; none for an aim without one. */
export function setMark(shared: Shared, aim: Aim | null): void {
  setPlane(shared.uMark_mm, aim);
}

/** Draws the waterline of another setup on the wood, dash and dot; none for one that is under water. */
export function setOtherWaterline(shared: Shared, float: Waterline | null): void {
  setPlane(shared.uOther_mm, float);
}

/** Still water in the body frame; offset null: the bait is under it. */
type Waterline = Pick<Aim, 'up' | 'offset'>;

function setPlane(uniform: IUniform<Vector4>, plane: Waterline | null): void {
  if (plane === null || plane.offset === null) uniform.value.set(0, 0, 0, 1);
  else uniform.value.set(...plane.up, plane.offset);
}

/** Wood of one link. */
export function makeLinkMaterial(shared: Shared, tint: string): ShaderMaterial {
  return shaderMaterial({
    vertexShader: linkVertex,
    fragmentShader: linkFragment,
    defines: { SLOT_LIMIT, CUT_FACE: 0 },
    side: FrontSide,
    ...stencilled(WOOD),
    // a hair behind its own edges, so that their lines are not eaten
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: {
      ...pick(shared, 'uDeep', 'uInk', 'uWaterline', 'uSkyHorizon', 'uSkyZenith'),
      ...pick(shared, 'uPixelRatio', 'uMark_mm', 'uOther_mm', 'uTime_s', 'uCut_mm', 'uKept'),
      uWood: { value: new Color(tint) },
      uSheen: { value: 0 },
      uSlots_mm: { value: Array.from({ length: SLOT_LIMIT }, () => new Vector4()) },
    },
  });
}

/**
 * The cut face of a link: where the first that a ray meets beyond the plane is the inside of its surface, the plane
 * was in the wood.
 */
export function makeCutFaceMaterial(wood: ShaderMaterial): ShaderMaterial {
  const { vertexShader, fragmentShader, defines, uniforms } = wood;
  return new ShaderMaterial({
    vertexShader,
    fragmentShader,
    defines: { ...defines, CUT_FACE: 1 },
    uniforms,
    side: BackSide,
    ...stencilled(CUT_FACE),
  });
}

/** Gives cut faces the depth of their plane, so that what stands before it is in plain sight and what is behind it hidden. */
export function makeCutDepthMaterial(): ShaderMaterial {
  return shaderMaterial({
    vertexShader: edgeVertex,
    fragmentShader: inkFragment,
    colorWrite: false,
    side: DoubleSide,
    depthFunc: AlwaysDepth,
    stencilWrite: true,
    stencilFunc: EqualStencilFunc,
    stencilRef: CUT_FACE,
    stencilZPass: DecrementStencilOp,
    uniforms: { ...uncut(), uInk: { value: new Color() }, uCover: { value: 1 } },
  });
}

/** Opens a link's faces where its slots come out; slots beyond the limit stay shut. */
export function setSlots(material: ShaderMaterial, slots: readonly WettedSlot[]): void {
  const boxes = material.uniforms.uSlots_mm.value as Vector4[];
  boxes.forEach((box, i) => {
    const slot = slots[i];
    if (slot) box.set(slot.width / 2, slot.z[0], slot.z[1], OPENS_NUMBER[slot.opens]);
    else box.set(0, 0, 0, 0);
  });
}

/** Half as thick again as one brushed coat: from here on varnish hides the pores and looks wet. */
const GLOSSY_MM: Mm = 0.15;

/** Makes wood shine by how thick the coats on its outside are; bare or soaked wood stays dull. */
export function setSheen(material: ShaderMaterial, coats: Mm): void {
  material.uniforms.uSheen.value = 1 - Math.exp(-coats / GLOSSY_MM);
}

/** The visible edge round a link. */
export function makeOutlineMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: outlineVertex,
    fragmentShader: inkFragment,
    side: BackSide,
    uniforms: {
      ...pick(shared, 'uInk', 'uViewport_px', 'uPixelRatio', 'uCut_mm', 'uKept'),
      uWidth_px: { value: OUTLINE_PX },
      uCover: { value: 1 },
    },
  });
}

/** Rims, as lines: of joint faces, which are cut with their wood, and of fins, which stay whole. */
export function makeEdgeMaterial(shared: Shared, of: 'wood' | 'fin'): ShaderMaterial {
  return shaderMaterial({
    vertexShader: edgeVertex,
    fragmentShader: inkFragment,
    transparent: true,
    depthWrite: false,
    uniforms: {
      ...pick(shared, 'uInk'),
      ...(of === 'wood' ? pick(shared, 'uCut_mm', 'uKept') : uncut()),
      uCover: { value: 0.8 },
    },
  });
}

/** Plumb lines through the centres: a drawing's own lines, over whatever is drawn. */
export function makeMarkMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: edgeVertex,
    fragmentShader: inkFragment,
    transparent: true,
    depthTest: false,
    depthWrite: false,
    uniforms: { ...pick(shared, 'uInk'), ...uncut(), uCover: { value: 0.9 } },
  });
}

/** Another rest of the bait, or the bait in another setup: so pale that all behind it stays to be seen. */
export function makeGhostMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: partVertex,
    fragmentShader: ghostFragment,
    transparent: true,
    depthWrite: false,
    side: FrontSide,
    uniforms: { ...pick(shared, 'uInk'), uCover: { value: 0.12 } },
  });
}

/** A part where nothing stands before it. wet: 0 for what is shut in the wood, which no water tints. */
export function makePartMaterial(shared: Shared, tint: string, wet: 0 | 1): ShaderMaterial {
  return shaderMaterial({
    vertexShader: partVertex,
    fragmentShader: partFragment,
    ...stencilled(NOT_WOOD),
    uniforms: { ...pick(shared, 'uDeep'), uTint: { value: new Color(tint) }, uWet: { value: wet } },
  });
}

/**
 * A part seen through the wood. behind: only where wood stands before it; inside: wherever there is wood on the
 * screen, for what never comes out of it.
 */
export function makeHiddenMaterial(
  shared: Shared,
  tint: string,
  where: 'behind' | 'inside',
  fill: number,
): ShaderMaterial {
  return shaderMaterial({
    vertexShader: partVertex,
    fragmentShader: hiddenFragment,
    transparent: true,
    depthWrite: false,
    depthFunc: where === 'behind' ? GreaterDepth : AlwaysDepth,
    stencilWrite: true,
    stencilFunc: EqualStencilFunc,
    stencilRef: WOOD,
    uniforms: { ...pick(shared, 'uPixelRatio'), uTint: { value: new Color(tint) }, uFill: { value: fill } },
  });
}

/** Where no lead may go, through the wood: each place on the screen once, however many keep-outs lie behind it. */
export function makeKeepOutMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: edgeVertex,
    fragmentShader: barredFragment,
    ...overAll(),
    depthFunc: AlwaysDepth,
    stencilWrite: true,
    stencilFunc: EqualStencilFunc,
    stencilRef: WOOD,
    stencilFuncMask: WOOD | BARRED,
    stencilWriteMask: BARRED,
    stencilZPass: InvertStencilOp,
    uniforms: {
      ...pick(shared, 'uPixelRatio'),
      ...uncut(),
      uGround: shared.uPaper,
      uStroke: shared.uPencil,
      uGroundCover: { value: 0.42 },
      uStrokeCover: { value: 0.85 },
    },
  });
}

/** The line round keep-outs, drawn where none of them is. */
export function makeKeepOutEdgeMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: outlineVertex,
    fragmentShader: inkFragment,
    ...overAll(),
    side: BackSide,
    depthFunc: AlwaysDepth,
    stencilWrite: true,
    stencilFunc: EqualStencilFunc,
    stencilRef: WOOD,
    stencilFuncMask: WOOD | BARRED,
    uniforms: {
      ...pick(shared, 'uViewport_px', 'uPixelRatio'),
      ...uncut(),
      uInk: shared.uPencil,
      uWidth_px: { value: OUTLINE_PX },
      uCover: { value: 1 },
    },
  });
}

/** Notes where wanted walls are on the screen, and draws nothing. */
export function makeWallGroundMaterial(): ShaderMaterial {
  return shaderMaterial({
    vertexShader: edgeVertex,
    fragmentShader: inkFragment,
    ...overAll(),
    colorWrite: false,
    side: DoubleSide,
    depthFunc: AlwaysDepth,
    stencilWrite: true,
    stencilRef: WALLED,
    stencilWriteMask: WALLED,
    stencilFunc: AlwaysStencilFunc,
    stencilZPass: ReplaceStencilOp,
    uniforms: { ...uncut(), uInk: { value: new Color() }, uCover: { value: 1 } },
  });
}

/** The line round wanted walls, over all else. */
export function makeWallEdgeMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: outlineVertex,
    fragmentShader: inkFragment,
    ...overAll(),
    side: BackSide,
    depthFunc: AlwaysDepth,
    stencilWrite: true,
    stencilFunc: EqualStencilFunc,
    stencilRef: 0,
    stencilFuncMask: WALLED,
    uniforms: {
      ...pick(shared, 'uInk', 'uViewport_px', 'uPixelRatio'),
      ...uncut(),
      uWidth_px: { value: THIN_PX },
      uCover: { value: 0.75 },
    },
  });
}

/** What of a wanted wall comes out of the wood: there the wood is too thin. It is cut with the wood. */
export function makeWallOutMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: edgeVertex,
    fragmentShader: barredFragment,
    ...overAll(),
    uniforms: {
      ...pick(shared, 'uPixelRatio', 'uCut_mm', 'uKept'),
      uGround: shared.uWrong,
      uStroke: shared.uWrong,
      uGroundCover: { value: 0.2 },
      uStrokeCover: { value: 0.85 },
    },
  });
}

/** Seen through, after all that is solid. */
function overAll(): ShaderMaterialParameters {
  return { transparent: true, depthWrite: false };
}

/** Colours a part anew, seen or hidden. */
export function setTint(material: ShaderMaterial, tint: string): void {
  (material.uniforms.uTint.value as Color).set(tint);
}

/** The water's surface. */
export function makeSurfaceMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: surfaceVertex,
    fragmentShader: surfaceFragment,
    transparent: true,
    depthWrite: false,
    side: DoubleSide,
    uniforms: {
      ...pick(shared, 'uWater', 'uSkyHorizon', 'uSkyZenith', 'uRipple', 'uTime_s'),
      uReach_mm: { value: 1 },
    },
  });
}

/** reach: from the middle of the surface to where it has faded away. */
export function setSurface(material: ShaderMaterial, reach: Mm): void {
  material.uniforms.uReach_mm.value = reach;
}

/** The wash under the waterline in level views. */
export function makeWashMaterial(shared: Shared): ShaderMaterial {
  return shaderMaterial({
    vertexShader: washVertex,
    fragmentShader: washFragment,
    // blended, yet not among the transparent things, which all come after the wood
    blending: CustomBlending,
    blendSrc: SrcAlphaFactor,
    blendDst: OneMinusSrcAlphaFactor,
    blendSrcAlpha: OneFactor,
    blendDstAlpha: OneMinusSrcAlphaFactor,
    depthTest: false,
    depthWrite: false,
    side: DoubleSide,
    uniforms: {
      ...pick(shared, 'uWater', 'uPixelRatio'),
      uInk: shared.uWaterline,
      uHalfLength_mm: { value: 1 },
      uDepth_mm: { value: 1 },
      uMiddle_mm: { value: new Vector3() },
    },
  });
}

/** middle: x of the middle of what is shown; the sheet reaches halfLength to both sides and depth down. */
export function setWash(material: ShaderMaterial, middle: Mm, halfLength: Mm, depth: Mm): void {
  (material.uniforms.uMiddle_mm.value as Vector3).set(middle, 0, 0);
  material.uniforms.uHalfLength_mm.value = halfLength;
  material.uniforms.uDepth_mm.value = depth;
}

/** On wood and on what stands before wood the stencil tells which of the two is nearer. */
function stencilled(mark: number): ShaderMaterialParameters {
  return { stencilWrite: true, stencilRef: mark, stencilFunc: AlwaysStencilFunc, stencilZPass: ReplaceStencilOp };
}

function shaderMaterial(
  parameters: ShaderMaterialParameters & { vertexShader: string; fragmentShader: string },
): ShaderMaterial {
  return new ShaderMaterial({
    ...parameters,
    vertexShader: withChunks(parameters.vertexShader),
    fragmentShader: withChunks(parameters.fragmentShader),
  });
}

/** Some of the shared uniforms: the objects themselves, not copies. */
function pick<Name extends keyof Shared>(shared: Shared, ...names: readonly Name[]): Pick<Shared, Name> {
  return Object.fromEntries(names.map((name) => [name, shared[name]])) as Pick<Shared, Name>;
}
