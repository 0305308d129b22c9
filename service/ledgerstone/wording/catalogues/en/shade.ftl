# The colour: how far it is from what was asked for, and how sure it is.

shade-not-matched = We do not mix a shade to match { $wished }; we cast the shades of our palette. The nearest is { $nearest }, { $difference }.
shade-out-of-reach = { NAME($slab, start: "yes") } cannot be { $wished } in concrete: the nearest that we can mix is { $nearest }, { $difference }. Ask for a cast sample, or choose a shade from our palette.
dose-over-limit = The shade { $shade } takes { $dose }% pigment, and we cast with { $limit }% at most, so that the concrete keeps its strength.
shade-the-same = the same to the eye as the colour you asked for
shade-difference = { $amount ->
    [touch] a touch { $directions } than you asked for
    [little] a little { $directions } than you asked for
    [far] far { $directions } than you asked for
   *[clearly] clearly { $directions } than you asked for
}
shade-direction = { $direction ->
    [lighter] lighter
    [darker] darker
    [stronger] stronger in colour
    [greyer] greyer
    [warmer] warmer
    [cooler] cooler
    [redder] redder
    [greener] greener
    [yellower] yellower
   *[bluer] bluer
}
shade-worked-out = { shade-certainty } { screens-differ }
shade-certainty = { $certainty ->
    [no-tile] Worked out from example figures: no tile of ours has been cast for it yet.
    [as-batches] Worked out from tiles that we cast and had read. The cast piece may differ from it as one batch does from the next.
    [side-by-side] Worked out from tiles that we cast and had read. The cast piece may differ from it by as much as you would see side by side.
   *[not-read] Worked out from tiles that we cast and had read. No tile near it has been read, so the cast piece may look clearly different.
}
shade-without-tile = An example: no tile of ours has been cast for it yet. { screens-differ }
shade-judged-by-eye = Judged by eye from a cast tile. { screens-differ }
shade-read-by-instrument = Read by instrument from a cast tile. { screens-differ }
shade-matched = The nearest that we can mix is { $difference }. { shade-certainty } { screens-differ }
screens-differ = Screens show colours differently: ask for a cast sample before you decide.
