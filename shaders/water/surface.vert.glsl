/* The water's surface: a flat sheet at still water. position: -1..1 over the sheet. */
uniform float uReach_mm;

varying vec2 vPlace_mm;

void main() {
  vPlace_mm = position.xy * uReach_mm;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(vPlace_mm, 0.0, 1.0);
}
