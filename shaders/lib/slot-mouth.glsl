/*
 * slotMouth: where a point of a joint face stands to the mouth of a slot.
 * place_mm: body frame. slot: half width, lower z, upper z, all in mm; w is not used. Gives mm, negative in the mouth.
 */
float slotMouth(vec3 place_mm, vec4 slot) {
  float middle_mm = 0.5 * (slot.y + slot.z);
  float reach_mm = 0.5 * (slot.z - slot.y);
  return max(abs(place_mm.y) - slot.x, abs(place_mm.z - middle_mm) - reach_mm);
}
