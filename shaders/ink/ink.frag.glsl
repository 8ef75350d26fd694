/* Plain ink, but for what is cut away. */
#include <cut-away>

uniform vec3 uInk;
uniform float uCover;
uniform float uCut_mm;
uniform float uKept;

varying vec3 vBody_mm;

void main() {
  if (cutAway(vBody_mm, uCut_mm, uKept)) discard;
  gl_FragColor = vec4(uInk, uCover);
  #include <colorspace_fragment>
}
