/*
 * A wash of colour under the waterline, as laid on paper with a wet brush, behind everything. It gives way to the
 * surface as the view climbs; its line stands for the surface where that is seen from its edge.
 */
precision highp float;

#include <noise>
#include <drawn-line>
#include <half-under>

uniform vec3 uWater;
uniform vec3 uInk;
uniform float uPixelRatio;

varying vec2 vShare;
varying float vHeight_mm;
varying float vClimb;

void main() {
  const float STRENGTH_TOP = 0.3;
  const float STRENGTH_FOOT = 0.1;
  const vec2 FULL_TO_GONE = vec2(0.1, 0.5); // sine of the climb: full within 6 degrees, gone at 30
  const float SOFT_MM = 120.0; // how far down the upper edge softens, times the sine
  const float LINE_PX = 1.3;
  const float FADE_MM = 26.0;
  const float BRUSH_MM = 9.0;

  float level = 1.0 - smoothstep(FULL_TO_GONE.x, FULL_TO_GONE.y, vClimb);
  float ends = 1.0 - smoothstep(0.9, 1.0, abs(vShare.x));
  float foot = smoothstep(-1.0, -0.75, vShare.y);
  float brush = 0.86 + 0.28 * noise(vec3(vShare * vec2(21.0, 5.0), vHeight_mm / BRUSH_MM));
  float cut = halfUnder(vClimb);
  float top = clamp(-vHeight_mm / max(SOFT_MM * vClimb * (1.0 - cut), 1e-3), 0.0, 1.0);
  float wash = mix(STRENGTH_FOOT, STRENGTH_TOP, exp(vHeight_mm / FADE_MM)) * top * foot * ends * brush;
  float line = drawnLine(vHeight_mm, 2.0 * LINE_PX * uPixelRatio) * ends * cut;
  gl_FragColor = vec4(mix(uWater, uInk, line), level * mix(wash, 0.8, line));
  #include <colorspace_fragment>
}
