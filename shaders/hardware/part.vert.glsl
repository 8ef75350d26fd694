/* A metal part. position, normal: its own frame. */
varying vec3 vScene_mm;
varying vec3 vNormal;

void main() {
  vNormal = normalMatrix * normal;
  vec4 scene = modelMatrix * vec4(position, 1.0);
  vScene_mm = scene.xyz;
  gl_Position = projectionMatrix * viewMatrix * scene;
}
