/* A wash of colour under the waterline, as laid on paper with a wet brush; only for level views. */
#include <noise>
#include <drawn-line>

uniform vec3 uWater;
uniform vec3 uInk;
uniform float uPixelRatio;

varying vec2 vShare;
varying float vHeight_mm;
varying float vLevelView;

void main() {
  const float STRENGTH_TOP = 0.3;
  const float STRENGTH_FOOT = 0.1;
  const float LEVEL_ENOUGH = 0.985; // within 10 degrees of level; beyond, the surface itself is seen
  const float LINE_PX = 1.3;
  const float BRUSH_MM = 9.0;

  float level = smoothstep(LEVEL_ENOUGH - 0.1, LEVEL_ENOUGH, vLevelView);
  float ends = 1.0 - smoothstep(0.9, 1.0, abs(vShare.x));
  float foot = smoothstep(-1.0, -0.75, vShare.y);
  float brush = 0.86 + 0.28 * noise(vec3(vShare * vec2(21.0, 5.0), vHeight_mm / BRUSH_MM));
  float wash = mix(STRENGTH_FOOT, STRENGTH_TOP, exp(vHeight_mm / 26.0)) * foot * ends * brush;
  float line = drawnLine(vHeight_mm, 2.0 * LINE_PX * uPixelRatio) * ends;
  gl_FragColor = vec4(mix(uWater, uInk, line), level * mix(wash, 0.8, line));
  #include <colorspace_fragment>
}
