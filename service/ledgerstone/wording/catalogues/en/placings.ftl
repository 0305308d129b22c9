# What the page's buttons place, and why something fits nowhere.

piece-name = { $piece ->
    [basin] basin
    [sink] sink
    [tap] tap
    [hob] hob
    [appliance] appliance
    [round] round opening
    [rectangle] rectangle
    [slot] slot
    [drainer] drainer
    [recess] recess
   *[rebate] rebate
}
placing-added = Added: { $name }. It is placed where it can be made; move it as you like.
placing-moved = { NAME($opening, start: "yes") } has made room for it: its middle is now { $x } from the left and { $y } from the front.
placing-units = We took { $units }. Change them to yours.
placing-too-deep = A slab for this opening ({ $name }) is at least { $depth } from front to back. Make the slab wider or the opening smaller.
placing-no-room = There is no room on this slab for another opening like this ({ $name }). Make the slab longer, or take something out.
placing-nowhere = There is no room on this slab for all of its openings. Make it larger, or take something out.
