/* Sharp edges, drawn as lines. position: body frame, mm. */
void main() {
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
