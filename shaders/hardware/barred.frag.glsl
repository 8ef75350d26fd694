/*
 * Room that is not to be had: a pale wash with strokes that slant against those of hidden parts. What is cut away with the
 * wood is left out where uKept and uCut_mm say so.
 */
#include <cut-away>
#include <hatch>

uniform vec3 uGround;
uniform vec3 uStroke;
/* Cover of the wash between the strokes, and of the strokes. */
uniform float uGroundCover;
uniform float uStrokeCover;
uniform float uPixelRatio;
uniform float uCut_mm;
uniform float uKept;

varying vec3 vBody_mm;

void main() {
  const float HATCH_PX = 6.0;
  if (cutAway(vBody_mm, uCut_mm, uKept)) discard;
  float stroke = hatch(vec2(-gl_FragCoord.x, gl_FragCoord.y), HATCH_PX * uPixelRatio);
  gl_FragColor = vec4(mix(uGround, uStroke, stroke), mix(uGroundCover, uStrokeCover, stroke));
  #include <colorspace_fragment>
}
