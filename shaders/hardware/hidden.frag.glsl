/* A part inside or behind the wood: tinted and hatched, its outline dashed as hidden edges are. */
#include <hatch>

uniform vec3 uTint;
uniform float uPixelRatio;
uniform float uFill;

varying vec3 vScene_mm;
varying vec3 vNormal;

void main() {
  const float HATCH_PX = 4.0;
  const float DASH_PX = 7.0;
  const float OUTLINE = 0.34; // facing this little, a surface turns away: the outline
  float facing = abs(normalize(vNormal).z);
  float outline = 1.0 - smoothstep(OUTLINE - 0.12, OUTLINE, facing);
  float dash = step(0.4, fract((gl_FragCoord.x - 0.6 * gl_FragCoord.y) / (DASH_PX * uPixelRatio)));
  float fill = uFill * (0.72 + 0.28 * hatch(gl_FragCoord.xy, HATCH_PX * uPixelRatio));
  gl_FragColor = vec4(mix(uTint, uTint * 0.45, outline * dash), max(fill, 0.85 * outline * dash));
  #include <colorspace_fragment>
}
