/* Plain ink. */
uniform vec3 uInk;
uniform float uCover;

void main() {
  gl_FragColor = vec4(uInk, uCover);
  #include <colorspace_fragment>
}
