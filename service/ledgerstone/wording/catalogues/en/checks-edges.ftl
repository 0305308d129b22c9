# Checks of edges.

edge-too-small = The { edge-profile } along { NAME($side) } is { $size }; the smallest we make is { $limit }.
edge-too-large = The { edge-profile } along { NAME($side) } is { $size }; the largest we make is { $limit }.
edge-profile = { $profile ->
    [bevel] bevel
    [round] round
    [wall] wall
   *[square] square
}
edge-too-deep = { $is_left ->
    [nothing] The { edge-profile } along { NAME($side) } takes { $size } of { $thickness } and leaves nothing; it needs { $limit }.
   *[some] The { edge-profile } along { NAME($side) } takes { $size } of { $thickness } and leaves { $left }; it needs { $limit }.
}
edge-too-thin-for-finish = { $profile ->
    [none] To { surface-verb } { NAME($slab) } we need { $limit } of upright edge; its edge has { $left }.
   *[other] To { surface-verb } { NAME($slab) } we need { $limit } of upright edge; the { edge-profile } along { NAME($side) } has { $left }.
}
