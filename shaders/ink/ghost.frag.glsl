/* A pale shape, see-through but for where its surface turns away from the eye: its outline. */
uniform vec3 uInk;
uniform float uCover;

varying vec3 vNormal;

void main() {
  const float OUTLINE = 0.36; // facing this little, a surface turns away
  const float OUTLINE_COVER = 0.6;
  float facing = abs(normalize(vNormal).z);
  gl_FragColor = vec4(uInk, mix(OUTLINE_COVER, uCover, smoothstep(0.6 * OUTLINE, OUTLINE, facing)));
  #include <colorspace_fragment>
}
