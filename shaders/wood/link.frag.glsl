/*
 * Wood of a link: grain, light, water over the wet part, and the waterline exactly where still water (height 0) cuts it.
 * Where the bait is cut away, what is seen of it from inside is the cut face, a program of its own (CUT_FACE 1): flat,
 * hatched, and dry, as sections are drawn.
 * Kinds: 0 skin, 1 fore face, 2 aft face, 3 slot.
 */
precision highp float; // a tenth of a millimetre in 300, and dashes from it: mediump has 10 bits

#include <cut-away>
#include <hatch>
#include <noise>
#include <grain>
#include <lamp>
#include <drawn-line>
#include <dash-dot>
#include <fresnel>
#include <shine>
#include <sky>
#include <underwater>
#include <waves>
#include <caustic>
#include <slot-mouth>
#include <scene-normal>

const int SKIN = 0;
const int SLOT = 3;

uniform vec3 uWood;
uniform vec3 uDeep;
uniform vec3 uInk;
uniform vec3 uWaterline;
uniform vec3 uSkyHorizon;
uniform vec3 uSkyZenith;
/* Of the coats on the outside: 0 for bare wood .. 1. */
uniform float uSheen;
uniform float uPixelRatio;
uniform float uTime_s;
/* The waterline aimed for, body frame: unit vector up, and offset in mm. All 0 but the offset: none. */
uniform vec4 uMark_mm;
/* The waterline of another setup, likewise. */
uniform vec4 uOther_mm;
uniform float uCut_mm;
uniform float uKept;
/* Half width, lower z, upper z in mm; w: 1 opens fore, 2 opens aft, 0 none. */
uniform vec4 uSlots_mm[SLOT_LIMIT];

varying vec3 vBody_mm;
varying vec3 vScene_mm;
varying vec3 vNormal;
flat varying int vKind;
flat varying vec3 vToEye;

void main() {
  const float WATERLINE_PX = 1.5;
  const float DASH_MM = 3.0;
  const float DASH = 0.6; // share of it that is ink
  const float OTHER_COVER = 0.7; // paler than a line of this setup's own
  const float EDGE_PX = 1.2;
  const float HATCH_PX = 7.0;
  const float HATCH_COVER = 0.55;
  const float CUT_LIGHT = 0.92; // paler than any flank
  const float CUT_PX = 2.0; // thick, as the edge of a section is
  const float EDGE_ON = 1e-3;
  const float SPOT = 0.3; // of the window in thick varnish
  const float SPOT_NARROW = 26.0; // varnish on hand-carved wood is no mirror
  const float MIRRORED = 0.45; // of the sky, along an edge
  const float UNDER_WATER = 0.35; // varnish shines less where there is water for air
  const float IN_THE_SHADE = 0.42; // slots see little of the window

  // before anything is thrown away: derivatives need their neighbours
  vec3 flatNormal = normalize(cross(dFdx(vScene_mm), dFdy(vScene_mm)));
  float year = grain(vBody_mm);
  float height_mm = vScene_mm.y;
  if (CUT_FACE == 1) {
    // the cut face stands where the ray to the eye comes through the plane, not where it starts
    float toPlane_mm = (uCut_mm - vBody_mm.y) / (-uKept * max(-uKept * vToEye.y, EDGE_ON));
    height_mm += toPlane_mm * viewMatrix[1][2];
  }
  float waterline = drawnLine(height_mm, WATERLINE_PX * uPixelRatio);
  float mark = drawnLine(dot(uMark_mm.xyz, vBody_mm) - uMark_mm.w, WATERLINE_PX * uPixelRatio);
  mark *= step(fract((vBody_mm.x + vBody_mm.y) / DASH_MM), DASH); // y too: faces and fronts have one x
  float other = drawnLine(dot(uOther_mm.xyz, vBody_mm) - uOther_mm.w, WATERLINE_PX * uPixelRatio);
  other *= OTHER_COVER * dashDot(vBody_mm.x + vBody_mm.y);
  if (CUT_FACE == 1) mark = other = 0.0; // the far side's own
  float mouth_mm = 1e3;
  for (int i = 0; i < SLOT_LIMIT; i++) {
    if (int(uSlots_mm[i].w + 0.5) == vKind) mouth_mm = min(mouth_mm, slotMouth(vBody_mm, uSlots_mm[i]));
  }
  float edge = drawnLine(mouth_mm, 2.0 * EDGE_PX * uPixelRatio);
  float cutEdge = drawnLine(vBody_mm.y - uCut_mm, 2.0 * CUT_PX * uPixelRatio);
  if (vKind != SKIN && vKind != SLOT && mouth_mm < 0.0) discard;
  if (cutAway(vBody_mm, uCut_mm, uKept)) discard;

  vec3 normal = vKind == SKIN ? sceneNormal(normalize(vNormal), viewMatrix) : flatNormal;
  float light = lamp(normal) * (vKind == SLOT ? IN_THE_SHADE : 1.0);
  vec3 colour = uWood * mix(1.08, vKind == SKIN ? 0.8 : 0.7, year) * light;
  float lit = smoothstep(-0.6, 0.8, normal.y) * (vKind == SKIN ? 1.0 : 0.0);
  if (vKind == SKIN) {
    vec3 toEye = normalize(vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]));
    float sheen = uSheen * mix(UNDER_WATER, 1.0, step(0.0, vScene_mm.y));
    float thrownBack = MIRRORED * fresnel(abs(dot(normal, toEye)));
    colour = mix(colour, sky(reflect(-toEye, normal), uSkyHorizon, uSkyZenith), sheen * thrownBack);
    colour += sheen * SPOT * shine(normal, toEye, SPOT_NARROW);
  }
  colour *= 1.0 + caustic(vScene_mm, lit, uTime_s);
  colour = underwater(colour, vScene_mm.y, uDeep);
  if (CUT_FACE == 1) {
    colour = mix(uWood * CUT_LIGHT, uInk, HATCH_COVER * hatch(gl_FragCoord.xy, HATCH_PX * uPixelRatio));
  } else {
    colour = mix(colour, uInk, cutEdge);
  }
  if (CUT_FACE == 0 && vKind != SKIN && vKind != SLOT) colour = mix(colour, uInk, edge);
  gl_FragColor = vec4(mix(mix(mix(colour, uInk, other), uWaterline, waterline), uInk, mark), 1.0);
  #include <colorspace_fragment>
}
