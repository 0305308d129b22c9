# Checks of joins and drops.

join-to-itself = Join { $join } names { NAME($slab) } twice. Name the two slabs that meet.
join-suggested = The join between { NAME($one) } and { NAME($other) } is priced as asked. We'll agree where the join goes before we cast.
join-of-unlike-thickness = { NAME($one, start: "yes") } is { $thickness } thick, and { NAME($other) } is { $other_thickness }. Make them alike, or have the thinner one packed up.
join-of-unlike-ends = { NAME($side, start: "yes") } of { NAME($one) } is { $length } long, and { NAME($other_side) } of { NAME($other) } is { $other_length }. Make them alike, so that front and back run through.
join-along-a-side = { NAME($side, start: "yes") } of { NAME($one) } is { $length } long, and { NAME($other_side) } of { NAME($other) } is { $other_length }. We join them as the drawing of the pieces together shows; tell us where the shorter meets the longer if it is not there.
join-of-unlike-looks = { $unlike ->
    [shade] { NAME($one, start: "yes") } and { NAME($other) } are joined and are not of one shade, so the join will show. Choose the same for both.
   *[finish] { NAME($one, start: "yes") } and { NAME($other) } are joined and are not of one finish, so the join will show. Choose the same for both.
}
join-through-relief = { NAME($what, start: "yes") } of { NAME($slab) } comes to join { $join }. It is priced in that slab alone: how it carries on past the join is not worked out. Ask us.
drop = the drop
drop-not-checked = { $count ->
    [1] The drop at { NAME($side) } of { NAME($slab) } is priced and weighed, but the strength check takes the slab without its corner. Stand it on something, and carry it with the corner braced.
   *[other] The drops of { NAME($slab) } are priced and weighed, but the strength check takes the slab without their corner. Stand it on something, and carry it with the corner braced.
}
