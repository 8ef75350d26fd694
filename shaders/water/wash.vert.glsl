/*
 * The water seen through its side: an upright sheet that always faces the viewer, its upper edge at still water.
 * position: x -1..1 along the sheet, y -1..0 from its foot to the surface. vClimb: sine of the view's climb, 0 when
 * one looks along the surface.
 */
uniform float uHalfLength_mm;
uniform float uDepth_mm;
uniform vec3 uMiddle_mm;

varying vec2 vShare;
varying float vHeight_mm;
varying float vClimb;

void main() {
  vec3 right = vec3(viewMatrix[0][0], viewMatrix[1][0], viewMatrix[2][0]);
  vShare = position.xy;
  vHeight_mm = position.y * uDepth_mm;
  vClimb = abs(viewMatrix[1][2]);
  vec3 scene = uMiddle_mm + right * position.x * uHalfLength_mm + vec3(0.0, vHeight_mm, 0.0);
  gl_Position = projectionMatrix * viewMatrix * vec4(scene, 1.0);
}
