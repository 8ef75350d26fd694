/* Sharp edges, drawn as lines. position: body frame, mm. */
varying vec3 vBody_mm;

void main() {
  vBody_mm = position;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
