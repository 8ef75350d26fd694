/*
 * A link of the bait. position, normal: body frame, mm. kind: what the triangle is a piece of, see link.frag.glsl.
 */
attribute float kind;

varying vec3 vBody_mm;
varying vec3 vScene_mm;
varying vec3 vNormal;
flat varying int vKind;
/* From the bait to the eye, body frame, unit length: one for the whole picture. */
flat varying vec3 vToEye;

void main() {
  vBody_mm = position;
  vKind = int(kind + 0.5);
  vToEye = normalize(transpose(mat3(modelMatrix)) * vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]));
  vNormal = normalMatrix * normal;
  vec4 scene = modelMatrix * vec4(position, 1.0);
  vScene_mm = scene.xyz;
  gl_Position = projectionMatrix * viewMatrix * scene;
}
