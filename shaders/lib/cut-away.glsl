/*
 * cutAway: whether a point of the bait is on the side of an upright fore-and-aft plane that is not drawn.
 * place_mm: body frame. cut_mm: y of the plane. kept: 1 where starboard of it stays, -1 where port does.
 */
bool cutAway(vec3 place_mm, float cut_mm, float kept) {
  return kept * (place_mm.y - cut_mm) < 0.0;
}
