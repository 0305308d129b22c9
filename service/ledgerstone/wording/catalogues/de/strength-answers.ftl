# Wie nahe eine Platte an einen Riss kommt, in einem Satz.

strength-used = { $doing ->
    [own-weight] Am meisten verlangt ihr Eigengewicht von ihr: { $percent } der Festigkeit, mit der wir rechnen.
    [even-load] Am meisten verlangt die volle, verteilte Last von ihr: { $percent } der Festigkeit, mit der wir rechnen.
    [low-rest] Am meisten wird verlangt, wenn ein Auflager etwas zu tief liegt: { $percent } der Festigkeit, mit der wir rechnen.
    [somebody-sitting] Am meisten verlangt eine Person, die darauf sitzt: { $percent } der Festigkeit, mit der wir rechnen.
    [somebody-standing] Am meisten verlangt eine Person, die darauf steht: { $percent } der Festigkeit, mit der wir rechnen.
    [somebody-leaning] Am meisten verlangt eine Person, die sich darauf stützt: { $percent } der Festigkeit, mit der wir rechnen.
    [free-corner] Am meisten verlangt eine Person auf der freien Ecke: { $percent } der Festigkeit, mit der wir rechnen.
    [low-rest-and-sitting] Am meisten verlangt eine Person, die darauf sitzt, während ein Auflager etwas zu tief liegt: { $percent } der Festigkeit, mit der wir rechnen.
   *[moved] Am meisten wird verlangt, während wir sie bewegen: { $percent } der Festigkeit, mit der wir rechnen.
}
