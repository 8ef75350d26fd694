/*
 * The visible edge of a body: its far side, pushed out by a line's width on the screen and drawn behind it.
 * position, normal: body frame, mm.
 */
uniform vec2 uViewport_px;
uniform float uWidth_px;
uniform float uPixelRatio;

varying vec3 vBody_mm;

void main() {
  vBody_mm = position;
  vec4 clip = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  vec2 outward = (projectionMatrix * vec4(normalMatrix * normal, 0.0)).xy * uViewport_px;
  float size = length(outward);
  if (size > 0.0) clip.xy += outward / size * 2.0 * uWidth_px * uPixelRatio / uViewport_px * clip.w;
  gl_Position = clip;
}
