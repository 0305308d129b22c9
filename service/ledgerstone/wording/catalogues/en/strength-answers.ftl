# How near a slab comes to cracking, in one sentence.

strength-used = { $doing ->
    [own-weight] Most is asked of it by its own weight: { $percent } of the strength that we count on.
    [even-load] Most is asked of it by a full load spread over it: { $percent } of the strength that we count on.
    [low-rest] Most is asked of it with one rest a little low: { $percent } of the strength that we count on.
    [somebody-sitting] Most is asked of it by somebody sitting on it: { $percent } of the strength that we count on.
    [somebody-standing] Most is asked of it by somebody standing on it: { $percent } of the strength that we count on.
    [somebody-leaning] Most is asked of it by somebody leaning on it: { $percent } of the strength that we count on.
    [free-corner] Most is asked of it by somebody on its free corner: { $percent } of the strength that we count on.
    [low-rest-and-sitting] Most is asked of it by somebody sitting on it with one rest a little low: { $percent } of the strength that we count on.
   *[moved] Most is asked of it while we move it: { $percent } of the strength that we count on.
}
