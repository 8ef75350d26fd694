/*
 * A link of the bait. position, normal: body frame, mm. kind: what the triangle is a piece of, see link.frag.glsl.
 */
attribute float kind;

varying vec3 vBody_mm;
varying vec3 vScene_mm;
varying vec3 vNormal;
flat varying int vKind;

void main() {
  vBody_mm = position;
  vKind = int(kind + 0.5);
  vNormal = normalMatrix * normal;
  vec4 scene = modelMatrix * vec4(position, 1.0);
  vScene_mm = scene.xyz;
  gl_Position = projectionMatrix * viewMatrix * scene;
}
